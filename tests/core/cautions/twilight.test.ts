import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { framesOf } from '../support/blends.ts';
import { hourPlace } from '../support/hours.ts';
import { reportOf, toldOf } from '../support/sky-night.ts';

describe('twilight and sun-up', () => {
  // limits of -0.833, -12 and -18 degrees: the usual definitions
  it.each(['17:31', '17:34', '17:50', '18:26', '18:29', '18:55', '18:59'])(
    'at %s: told by the height of the sun, and gone past its limit',
    (time) => {
      const report = reportOf({ place: hourPlace(`2026-08-11T${time}`) });
      const sun = report.sky?.sun.altitudeDegrees ?? Number.NaN;
      const [up, dusk] = [toldOf(report, 'sun-up'), toldOf(report, 'twilight')];
      expect(up !== undefined).toBe(sun > -0.833);
      expect(dusk !== undefined).toBe(sun <= -0.833 && sun > -18);
      if (dusk) expect(dusk.severity).toBe(sun > -12 ? 'warning' : 'note');
      if (up) expect(up).toMatchObject({ severity: 'warning', limit: -0.833 });
    },
  );

  it('tells when it is dark: from 18:57, as worked out by hand-held tables (sky.md 3: 18:56:36), and before dawn until when', () => {
    const message = (time: string) => toldOf(reportOf({ place: hourPlace(`2026-08-11T${time}`) }), 'twilight')?.message;
    expect(message('18:20')).toMatch(/twilight, the sun is \d+(\.\d)?° under.*dark from 18:5[67] to 05:\d\d/);
    expect(message('06:00')).toMatch(/It was dark until 05:\d\d/);
  });

  it('tells of a night that does not get dark: 60 degrees north at midsummer', () => {
    const north = {
      ...hourPlace('2026-06-21T23:30'),
      latitudeDegrees: 60,
      longitudeDegrees: 10,
      timeZone: 'Europe/Oslo',
    };
    expect(toldOf(reportOf({ place: north }), 'twilight')?.message).toMatch(
      /does not get quite dark.*the sun [67](\.\d)?° down/,
    );
    const cape = { ...north, latitudeDegrees: 71 };
    expect(toldOf(reportOf({ place: cape }), 'sun-up')?.message).toMatch(/does not set in this night/);
  });

  it('lets land be taken in the blue hour beside a frame for the stars, and leaves plain skies alone', () => {
    const place = hourPlace('2026-08-11T18:20');
    const setup = framesOf([{ purpose: 'land' }, { purpose: 'painted' }], { place });
    expect(toldOf(reportScheme(setup, setup.schemes[0] as Scheme), 'twilight')).toBeUndefined();
    expect(toldOf(reportOf({ place: { ...place, sky: null } }), 'twilight')).toBeUndefined();
  });
});

describe('sky-burnt', () => {
  // a plain sky of E lux has E / pi cd/m2; full at 7.8 mid-greys: H = 0.65 L t / N^2, 10 / S is mid-grey (ISO 12232)
  const fullLux = (7.8 * 10 * 8 * Math.PI) / (0.65 * 15.5 * 3200);
  const under = (times: number, more: object = {}) =>
    toldOf(
      reportOf({
        place: { skylight: { illuminanceLux: fullLux * times } },
        frame: { seconds: 15.5, aperture: 2.8, iso: 3200, ...more },
      }),
      'sky-burnt',
    );
  it('is told of a sky past the sensor’s full scale, by how many stops, and goes under it', () => {
    expect(under(1.02)).toMatchObject({ severity: 'warning', frameId: 'frame-0' });
    expect(under(0.98)).toBeUndefined();
    expect(under(4)?.message).toMatch(/the sky is white, 2\.0 stops over/);
    // no sky at all
    expect(under(0)).toBeUndefined();
  });

  it('is told of a star exposure in civil twilight, and not in the dark', () => {
    const at = (time: string) => toldOf(reportOf({ place: hourPlace(`2026-08-11T${time}`) }), 'sky-burnt');
    expect(at('17:45')).toBeDefined();
    expect(at('19:30')).toBeUndefined();
  });
});
