import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { type DepthReading, depthReading } from '../../../core/readings/depth-reading.ts';
import type { VisibleRange } from '../../../core/readings/look-around.ts';
import type { Camera, Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { relativeError } from '../support/errors.ts';
import { onePassSetup } from '../support/scenes.ts';

const setupOf = (camera: object, frame: object) =>
  onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 10, 1.5], ...camera },
    frame,
    pass: { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] },
  });
const read = (camera: object, frame: object, range: VisibleRange): DepthReading | null => {
  const { camera: parsed, schemes } = setupOf(camera, frame);
  return depthReading(parsed as Camera, schemes[0]?.frames[0] as Frame, range);
};
const told = (...what: Parameters<typeof read>): DepthReading => {
  const reading = read(...what);
  if (!reading) throw new Error('no depth');
  return reading;
};
const range: VisibleRange = { nearestMetres: 2, farthestMetres: 15 };
/** Diagonal of 36 x 24 mm over 1442 (convention, from memory). */
const coc = Math.hypot(36, 24) / 1442;

/** Thin-lens limits in metres: s (H - f) / (H + s - 2 f) and s (H - f) / (H - s), H = f^2 / (N c) + f (checkvalues.md 4). */
const limits = (f: number, n: number, c: number, focusMetres: number) => {
  const [hyperfocal, s] = [f ** 2 / (n * c) + f, focusMetres * 1000];
  return {
    hyperfocal: hyperfocal / 1000,
    near: (s * (hyperfocal - f)) / (hyperfocal + s - 2 * f) / 1000,
    far: s >= hyperfocal ? null : (s * (hyperfocal - f)) / (hyperfocal - s) / 1000,
  };
};

describe('depthReading', () => {
  it.each([
    [24, 8, 1.5, 8],
    [24, 2.8, 6, 2 ** 1.5],
    [50, 8, 3, 8],
    [135, 5.6, 40, 2 ** 2.5],
    [24, 8, 500, 8],
  ])(
    '%d mm f/%d focused at %d m: limits of the thin lens at the exact f-number (rel 1e-9)',
    (f, aperture, focus, n) => {
      const reading = told({ focalLengthMm: f }, { aperture, focusMetres: focus }, range);
      const { near, far, hyperfocal } = limits(f, n, coc, focus);
      expect(relativeError(reading.circleOfConfusionMm, coc)).toBeLessThanOrEqual(1e-12);
      expect(relativeError(reading.hyperfocalMetres, hyperfocal)).toBeLessThanOrEqual(1e-9);
      expect(relativeError(reading.nearMetres, near)).toBeLessThanOrEqual(1e-9);
      if (far === null) expect(reading.farMetres).toBeNull();
      else expect(relativeError(reading.farMetres as number, far)).toBeLessThanOrEqual(1e-9);
    },
  );

  it('at full size on a screen two pixels count as sharp: 12 micrometres of 6000 pixels on 36 mm', () => {
    const reading = told({ sharpness: 'pixel' }, { focusMetres: 4 }, range);
    expect(reading.circleOfConfusionMm).toBeCloseTo(0.012, 12);
    expect(relativeError(reading.nearMetres, limits(24, 8, 0.012, 4).near)).toBeLessThanOrEqual(1e-9);
  });

  it.each([
    ['one frame is enough', { focalLengthMm: 24 }, { aperture: 11 }, 1],
    ['a few', { focalLengthMm: 50 }, { aperture: 8 }, 2],
    ['to the stars', { focalLengthMm: 50 }, { aperture: 8, purpose: 'sky' }, 2],
    ['many', { focalLengthMm: 85 }, { aperture: 5.6 }, 4],
  ])('%s: steps join without gaps from the nearest to the farthest thing', (_, camera, frame, least) => {
    const { steps, complete, farthestMetres } = told(camera, frame, range);
    expect(complete).toBe(true);
    expect(steps.length).toBeGreaterThanOrEqual(least);
    expect(steps[0]?.nearMetres).toBeLessThanOrEqual(2 + 1e-9);
    const last = steps.at(-1)?.farMetres ?? Number.POSITIVE_INFINITY;
    expect(last).toBeGreaterThanOrEqual((farthestMetres ?? Number.POSITIVE_INFINITY) * (1 - 1e-9));
    steps.slice(1).forEach((step, k) => {
      expect(step.nearMetres).toBeLessThanOrEqual(steps[k]?.farMetres ?? Number.POSITIVE_INFINITY);
      expect(step.focusMetres ?? Number.POSITIVE_INFINITY).toBeGreaterThan(steps[k]?.focusMetres as number);
    });
  });

  it('what is sharp throughout as it is focused needs one step; out of it, it says so', () => {
    const sharp = told({}, { aperture: 8, focusMetres: 3.5 }, range);
    expect(sharp).toMatchObject({ isSharpThroughout: true, nearestMetres: 2, farthestMetres: 15 });
    expect(sharp.steps.length).toBe(1);
    const soft = told({}, { aperture: 2.8, focusMetres: 15 }, range);
    expect(soft.isSharpThroughout).toBe(false);
    expect(soft.steps.length).toBeGreaterThan(1);
  });

  it('a sky frame, and a picture without subjects, reach to infinity: null', () => {
    const sky = told({}, { purpose: 'sky', focusMetres: 2.4 }, range);
    expect(sky).toMatchObject({ farthestMetres: null, nearestMetres: 2 });
    expect(sky.steps.at(-1)?.farMetres).toBeNull();
    const bare = told({}, {}, { nearestMetres: 2, farthestMetres: null });
    expect(bare.farthestMetres).toBeNull();
    // focused just short of the hyperfocal distance the stars are soft, at it they are sharp
    const atHyperfocal = (share: number) =>
      told({}, { purpose: 'sky', focusMetres: sky.hyperfocalMetres * share }, range).isSharpThroughout;
    expect([atHyperfocal(0.99), atHyperfocal(1.0001)]).toEqual([false, true]);
  });

  it('focused at infinity, which is 10 km in the document: sharp from the hyperfocal distance on, less the focal length, and without an end (rel 1e-9)', () => {
    const reading = told({ focalLengthMm: 50 }, { aperture: 8, focusMetres: 10_000 }, range);
    // s (H - f) / (H + s - 2 f) for s without end
    const { hyperfocal } = limits(50, 8, coc, 1);
    expect(reading.farMetres).toBeNull();
    expect(relativeError(reading.nearMetres, hyperfocal - 0.05)).toBeLessThanOrEqual(1e-9);
    expect(reading.isSharpThroughout).toBe(false);
  });

  it('nothing but sky: no nearest thing and no steps', () => {
    expect(told({}, {}, { nearestMetres: null, farthestMetres: null })).toMatchObject({
      nearestMetres: null,
      steps: [],
      complete: true,
    });
  });

  it('twelve frames that do not reach are not complete; a thing nearer than the focal length has no plan', () => {
    const tele = told({ focalLengthMm: 400 }, { aperture: 2.8 }, range);
    expect(tele.complete).toBe(false);
    expect(tele.steps.length).toBe(12);
    const close = told({ focalLengthMm: 400 }, {}, { nearestMetres: 0.3, farthestMetres: 15 });
    expect(close).toMatchObject({ steps: [], complete: false });
  });

  it('is null when the frame is focused nearer than the lens can, also in the report', () => {
    expect(read({ focalLengthMm: 100 }, { focusMetres: 0.1 }, range)).toBeNull();
    expect(read({ focalLengthMm: 100 }, { focusMetres: 0.101 }, range)).not.toBeNull();
    const setup = setupOf({ focalLengthMm: 100 }, { focusMetres: 0.06 });
    expect(reportScheme(setup, setup.schemes[0] as Scheme).frames[0]?.depth).toBeNull();
  });
});
