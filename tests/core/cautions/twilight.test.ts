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
