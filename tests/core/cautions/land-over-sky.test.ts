import { describe, expect, it } from 'vitest';
import { doseForMidGrey } from '../../../core/camera/exposure.ts';
import { limits } from '../../../core/cautions/limits.ts';
import { skyLevel } from '../../../core/readings/sky-level.ts';
import { smallPictures } from '../../../core/readings/small-picture.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { exactFNumber, exactIso } from '../../../core/units/third-stops.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { framesOf, passAt, told, withBlend } from '../support/blends.ts';
import { boxAt, cautionsOfSetup } from '../support/cautions.ts';

const star = { purpose: 'sky', aperture: 2, seconds: 12, iso: 5000, focusMetres: 1000 };
const skyLux = 0.0008;
/** From mid-grey: an even sky of E lux has E/pi cd/m2; log2(0.65 L t S / (10 N2)), ISO 12232. */
const skyStops = Math.log2((0.65 * (skyLux / Math.PI) * 12 * exactIso(5000)) / (10 * exactFNumber(2) ** 2));

/** A wall of 18 % that is brought to so many stops, 5 m from the lamp, square on; and a star frame. */
const wallAt = (stops: number, blend: readonly object[] = []): Setup => {
  const candela = (25 * doseForMidGrey({ fNumber: 8, iso: exactIso(400) }, 0.18) * 2 ** stops) / 4;
  const setup = framesOf(
    [star, { aperture: 8, iso: 400, focusMetres: 8, passes: [passAt([0, -5, 1.5], [0, 0, 1.5])] }],
    {
      place: { skylight: { illuminanceLux: skyLux, temperatureKelvin: 5600 } },
      subjects: [boxAt('wall', [0, 0.5, 0], [4, 1, 3]), boxAt('post', [3, 0.5, 0], [0.2, 0.2, 2])],
      lamps: [
        {
          kind: 'torch',
          id: 'torch',
          name: 'Torch',
          output: { from: 'peak-candela', candela },
          lowestLevelPercent: 1,
          beam: { shape: 'open' },
          diameterMm: 1,
        },
      ],
    },
  );
  return blend.length > 0 ? withBlend(setup, blend) : setup;
};

describe('land-over-sky', () => {
  it('the sky’s level is that of an even sky in closed form (abs 0.03 stop)', () => {
    const setup = wallAt(-1.5);
    const world = buildWorld(setup, setup.schemes[0] as Scheme);
    const [sky] = smallPictures(world).map((picture) => skyLevel(world, picture));
    expect(Math.abs((sky ?? 9) - skyStops)).toBeLessThan(0.03);
  });

  it('is told over three stops and goes under them', () => {
    const [caution, ...more] = told(wallAt(skyStops + limits.landOverSkyStops + 0.1), 'land-over-sky');
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ severity: 'note', passId: 'pass', frameId: 'frame-1', limit: 3 });
    expect(caution?.value).toBeCloseTo(3.1, 1);
    expect(caution?.message).toMatch(
      /3\.1 stops brighter than the sky of “Frame 0”.*0\.93\d? times as long.*weight 0\.93/,
    );
    expect(told(wallAt(skyStops + limits.landOverSkyStops - 0.1), 'land-over-sky')).toEqual([]);
  });

  it('says nothing where the sky itself is white, as in twilight: the file does not hold how bright it was', () => {
    const setup = wallAt(-1.5);
    const under = (illuminanceLux: number) => ({
      ...setup,
      place: { ...setup.place, skylight: { ...setup.place.skylight, illuminanceLux } },
    });
    const read = (illuminanceLux: number) => {
      const world = buildWorld(under(illuminanceLux), setup.schemes[0] as Scheme);
      return smallPictures(world).map((picture) => skyLevel(world, picture));
    };
    // 1000 lx: 18 % upright under half the sky sends 28.6 cd/m2, 14.8 stops over mid-grey in the star frame
    for (const level of read(1000)) expect(level).toBeGreaterThan(limits.burntStops - 0.05);
    expect(told(under(1000), 'land-over-sky')).toEqual([]);
  });

  it('goes by the weight that it advises, and where the frame counts in the sky alone', () => {
    const bright = skyStops + limits.landOverSkyStops + 1;
    const parts = (weight: number, where: string) => [
      { frameId: 'frame-0', weight: 1, where: 'everything' },
      { frameId: 'frame-1', weight, where },
    ];
    expect(told(wallAt(bright, parts(1, 'everything')), 'land-over-sky')).toHaveLength(1);
    expect(told(wallAt(bright, parts(0.49, 'everything')), 'land-over-sky')).toEqual([]);
    expect(told(wallAt(bright, parts(1, 'sky')), 'land-over-sky')).toEqual([]);
  });

  it('names the frame where more than one pass of it lights the land, for all of them are to be shorter', () => {
    const setup = wallAt(skyStops + limits.landOverSkyStops);
    const [scheme] = setup.schemes as [Scheme];
    const twice = scheme.frames.map((frame) => ({
      ...frame,
      passes: frame.passes.flatMap((pass) => [pass, { ...pass, id: 'second', name: 'Second', on: 5, off: 9 }]),
    }));
    const [caution] = told({ ...setup, schemes: [{ ...scheme, frames: twice }] }, 'land-over-sky');
    // light adds: one stop more, which half the count takes off
    expect(caution?.value).toBeCloseTo(limits.landOverSkyStops + 1, 1);
    expect(caution?.message).toMatch(/Count every pass of “Frame 1” 0\.(49|50?)\d? times as long/);
  });

  it('says nothing of a target that burns, which is to be darker anyway', () => {
    const codes = cautionsOfSetup(wallAt(limits.burntStops + 0.5)).map(({ code }) => code);
    expect(codes).toContain('burnt');
    expect(codes).not.toContain('land-over-sky');
  });

  it('goes where the target is not where the frame counts, and stays where it is', () => {
    const bright = skyStops + limits.landOverSkyStops + 1;
    const masked = (where: string, subjectId: string | null = null) =>
      told(
        wallAt(bright, [
          { frameId: 'frame-0', weight: 1, where: 'everything' },
          { frameId: 'frame-1', weight: 1, where, subjectId },
        ]),
        'land-over-sky',
      );
    expect(masked('ground')).toEqual([]);
    expect(masked('subject', 'post')).toEqual([]);
    expect(masked('subject', 'wall')).toHaveLength(1);
  });

  it('is as much as the blend makes of it: added up with the sky frame, or averaged with it where only one counts', () => {
    const over = (mode: string, where: string) => {
      const setup = wallAt(skyStops + 4.5, [
        { frameId: 'frame-0', weight: 1, where: 'everything' },
        { frameId: 'frame-1', weight: 1, where, subjectId: where === 'subject' ? 'wall' : null },
      ]);
      const [scheme] = setup.schemes as [Scheme];
      const blend = { ...scheme.blend, mode };
      return told({ ...setup, schemes: [{ ...scheme, blend }] } as Setup, 'land-over-sky')[0]?.value;
    };
    // the wall's own light under the sky, and the sky of the painted frame, are far less: within 0.1 stop
    expect(over('lighten', 'everything')).toBeCloseTo(4.5, 1);
    expect(over('add', 'everything')).toBeCloseTo(4.5, 1);
    expect(over('average', 'everything')).toBeCloseTo(4.5, 1);
    // the sky is the sky frame's alone there, the wall the mean of lit and unlit: half
    expect(over('average', 'subject')).toBeCloseTo(3.5, 1);
  });

  it('never advises nought: three figures, however far over', () => {
    const setup = wallAt(skyStops + limits.landOverSkyStops);
    // under a sky 128 times dimmer: 7 stops
    const dim = {
      ...setup,
      place: { ...setup.place, skylight: { ...setup.place.skylight, illuminanceLux: skyLux / 128 } },
    } as unknown as Setup;
    const [caution] = told(dim, 'land-over-sky');
    expect(caution?.value).toBeCloseTo(limits.landOverSkyStops + 7, 1);
    const [, times, weight] = /Count ([\d.]+) times as long.*weight ([\d.]+) in/.exec(caution?.message ?? '') ?? [];
    expect(Number(times) * 128).toBeCloseTo(1, 1);
    expect(times).toMatch(/^0\.00[1-9]\d{2}$/);
    expect(weight).toBe(times);
  });

  it('leaves the night level alone under every natural sky of the trade’s star frames', () => {
    // zenith of 22.0 mag/arcsec2 is 1.713e-4 cd/m2 (10.8e4 * 10^(-0.4 m)); no natural moonless sky is darker, from memory
    const darkest = 1.08e5 * 10 ** (-0.4 * 22);
    // star frames seen in pictures: the dimmest is 20 s, f/2.8, ISO 2000 (common practice, no published source)
    const frames = [
      [2.8, 20, 2000],
      [2.8, 20, 3200],
      [2.8, 25, 6400],
      [2, 13, 5000],
      [2.8, 30, 2500],
    ] as const;
    for (const [aperture, seconds, iso] of frames) {
      const sky = Math.log2((0.65 * darkest * seconds * exactIso(iso)) / (10 * exactFNumber(aperture) ** 2));
      expect(-1.5 - sky).toBeLessThan(limits.landOverSkyStops);
    }
  });
});
