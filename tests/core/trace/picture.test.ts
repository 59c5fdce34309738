import { describe, expect, it } from 'vitest';
import { layerWeight } from '../../../core/trace/layer-weights.ts';
import { developPicture, tracePicture } from '../../../core/trace/picture.ts';
import type { World } from '../../../core/world/world.ts';
import { relativeError, worst } from '../support/errors.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

interface Changes {
  readonly drawn?: object;
  readonly frame?: object;
  readonly pass?: object;
  readonly bounces?: number;
}
/** A wall that fills the picture under a lamp 100 m off, of the balance's own temperature: even light without colour. */
const setupWith = ({ drawn = {}, frame = {}, pass = {}, bounces = 0 }: Changes) => ({
  ...onePassSetup({
    camera: { position: [0, 0, 3], aim: [0, 10, 3], focalLengthMm: 50, drawn },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        parts: [{ kind: 'box', position: [0, 10, 0], widthMetres: 60, depthMetres: 0.4, heightMetres: 40 }],
      },
    ],
    lamp: { output: { from: 'peak-candela', candela: 20_000 }, temperatureKelvin: 4200 },
    frame,
    pass: { waypoints: [{ position: [0, -90.2, 3], aim: [0, 10, 3] }], ...pass },
  }),
  bounces,
});
const size = { width: 9, height: 6, samples: 4 };
const worldOf = (changes: Changes) => {
  const { world, worldFrame, light } = onlyPassOf(setupWith(changes));
  // the night sky is left out, so that only the lamp counts
  return { world, light, frame: { ...worldFrame, lights: [light] } };
};
const trace = (changes: Changes, change: (world: World) => World = (world) => world): Float64Array => {
  const { world, frame } = worldOf(changes);
  return tracePicture(change(world), frame, size);
};
/** Mid-grey ratio: q rho E t / (pi N^2) over 10 / S (ISO 12232), 2 lx on a wall that reflects a fifth. */
const expected = (seconds: number, iso: number, fNumber: number) =>
  (((0.65 * 0.2 * 2 * seconds) / (Math.PI * fNumber ** 2)) * iso) / 10;

describe('tracePicture of an even wall', () => {
  it.each([
    [1, 400, 8],
    [4, 400, 8],
    [1, 3200, 8],
    [1, 400, 2],
  ])(
    '%d s, ISO %d, f/%d: every pixel is q rho E t S / (10 pi N^2) mid-greys (ISO 12232, rel 0.5 %)',
    (off, iso, aperture) => {
      const picture = trace({ frame: { iso, aperture }, pass: { off } });
      expect(picture.length).toBe(9 * 6 * 3);
      expect(worst([...picture].map((v) => relativeError(v, expected(off, iso, aperture))))).toBeLessThanOrEqual(0.005);
    },
  );

  it('falls off to the corners by cos^4 where that is drawn (rel 0.5 % of the picture without)', () => {
    const [shaded, even] = [trace({ drawn: { vignetting: true } }), trace({})];
    for (const [x, y] of [
      [0, 0],
      [8, 3],
      [4, 5],
    ] as const) {
      const [h, v] = [((2 * (x + 0.5)) / 9 - 1) * 0.36, (1 - (2 * (y + 0.5)) / 6) * 0.24];
      const at = (y * 9 + x) * 3;
      const shade = (shaded[at] as number) / (even[at] as number);
      expect(relativeError(shade, 1 / (1 + h * h + v * v) ** 2)).toBeLessThanOrEqual(0.005);
    }
  });

  it('noise is drawn where that is asked for, and is the same each time', () => {
    const noise = { drawn: { noise: true }, frame: { iso: 12_800 } };
    const [a, b, clean] = [trace(noise), trace(noise), trace({ frame: { iso: 12_800 } })];
    expect([...a]).toEqual([...b]);
    const off = [...a].filter((v, i) => v !== clean[i]);
    expect(off.length).toBe(a.length);
  });

  it('is at most 7.8 mid-greys (ISO 12232: 78 / 10), however long', () => {
    expect(Math.max(...trace({ frame: { iso: 25_600, aperture: 1.4 }, pass: { off: 10 } }))).toBe(7.8);
  });

  it('bounced light of the ground only adds, and is left out with bounces at 0', () => {
    const lit = { pass: { waypoints: [{ position: [0, 8, 0.5], aim: [0, 7, 0] }] }, bounces: 1 };
    const [bounced, direct] = [trace(lit), trace(lit, (world) => ({ ...world, bounces: 0 }))];
    const more = [...bounced].map((v, i) => v - (direct[i] as number));
    expect(Math.min(...more)).toBeGreaterThanOrEqual(-1e-12);
    expect(Math.max(...more)).toBeGreaterThan(0);
    expect([...trace({ ...lit, bounces: 0 })]).toEqual([...direct]);
  });
});

describe('layerWeight', () => {
  it('is strength x seconds x q S / (10 N^2) (ISO 12232, rel 1e-12): level, time and speed only weigh', () => {
    const weight = (changes: Changes) => {
      const { frame, light } = worldOf(changes);
      return { weight: layerWeight(frame, light)[1], strength: light.strength[1] };
    };
    const { weight: full, strength } = weight({});
    expect(relativeError(full, (strength * 1 * 0.65 * 400) / (10 * 64))).toBeLessThanOrEqual(1e-12);
    expect(relativeError(weight({ pass: { levelPercent: 20 } }).weight / full, 0.2)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(weight({ pass: { off: 3 } }).weight / full, 3)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(weight({ frame: { iso: 800 } }).weight / full, 2)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(weight({ pass: { cloth: { stops: 3 } } }).weight / full, 1 / 8)).toBeLessThanOrEqual(1e-12);
  });
});

describe('developPicture', () => {
  // sRGB of 18 %: 0.461356 -> 118 (IEC 61966-2-1; standard output sensitivity of ISO 12232)
  it('dark is 0, mid-grey 118, full 255, by either response', () => {
    for (const response of ['soft', 'plain'] as const)
      expect([...developPicture(Float64Array.of(0, 1, 7.8, -0.3), response)]).toEqual([0, 118, 255, 0]);
  });
});
