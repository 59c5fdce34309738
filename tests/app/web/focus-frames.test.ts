import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { focusFrames } from '../../../app/web/state/edits/focus-frames.ts';
import { schemeMarks } from '../../../app/web/workers/scheme-marks.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const place = { schemeId: 'side', frameId: 'painted' };
const framesOf = ({ schemes }: Setup) => (schemes[0] as Scheme).frames;

describe('focusFrames', () => {
  const stacked = focusFrames(stones, place, [1.5, 3.2, null]);

  it('makes frames that differ in focus and name alone, in order, behind each other', () => {
    const [sky, ...made] = framesOf(stacked);
    const [skyBefore, painted] = framesOf(stones);
    expect(sky).toEqual(skyBefore);
    expect(made.map(({ focusMetres }) => focusMetres)).toEqual([1.5, 3.2, 10000]);
    expect(made.map(({ name }) => name)).toEqual([
      'Painted · focus 1.50 m',
      'Painted · focus 3.20 m',
      'Painted · focus ∞',
    ]);
    const asBefore = made.map((frame) => ({
      ...frame,
      id: painted?.id,
      name: painted?.name,
      focusMetres: painted?.focusMetres,
    }));
    expect(asBefore).toEqual([painted, painted, painted]);
    expect(new Set(made.map(({ id }) => id)).size).toBe(3);
    expect(parseSetup(formatSetup(stacked))).toEqual(stacked);
  });

  it('counts in a listed blend as the frame does, and is named anew when it is stacked again', () => {
    const part = { weight: 0.5, where: 'everything' as const, subjectId: null, featherPixels: 0 };
    const listed = {
      ...stones,
      schemes: stones.schemes.map((scheme) => ({
        ...scheme,
        blend: { ...scheme.blend, frames: [{ ...part, frameId: 'painted' }] },
      })),
    };
    const both = focusFrames(listed, place, [2, 5]);
    expect(both.schemes[0]?.blend.frames).toEqual([
      { ...part, frameId: 'painted' },
      { ...part, frameId: framesOf(both)[2]?.id },
    ]);
    expect(framesOf(focusFrames(both, place, [2.5]))[1]?.name).toBe('Painted · focus 2.50 m');
  });

  it('refuses more frames than a scheme takes, and makes none of nothing', () => {
    expect(() =>
      focusFrames(
        stones,
        place,
        Array.from({ length: 64 }, (_, k) => k + 1),
      ),
    ).toThrow(EditRefused);
    const part = { frameId: 'painted', weight: 1, where: 'everything', subjectId: null, featherPixels: 0 } as const;
    const often = (count: number): Setup => ({
      ...stones,
      schemes: stones.schemes.map((scheme) => ({
        ...scheme,
        blend: { ...scheme.blend, frames: Array.from({ length: count }, () => part) },
      })),
    });
    const steps = [1, 2, 3, 4, 5, 6];
    expect(() => focusFrames(often(12), place, steps)).toThrow(EditRefused);
    const ten = focusFrames(often(10), place, steps);
    expect(parseSetup(formatSetup(ten))).toEqual(ten);
    expect(focusFrames(stones, place, [])).toBe(stones);
    expect(focusFrames(stones, { ...place, frameId: 'none' }, [2, 5])).toBe(stones);
  });
});

describe('lines of equal blur', () => {
  const linesOf = (setup: Setup, frameIds: readonly string[]) =>
    schemeMarks(setup, setup.schemes[0] as Scheme, {
      frameIds,
      wants: { shadows: false, outline: false, sharpness: true },
    }).blurs;
  /** The stones’ camera, level over bare ground, wide open. */
  const bare = (focusMetres: number): Setup => {
    const camera = { ...stones.camera, position: [0, 0, 1] as const, aim: [0, 10, 1] as const, rollDegrees: 0 };
    const scheme = stones.schemes[0] as Scheme;
    const frames = scheme.frames.map((frame) => ({ ...frame, aperture: 2.8, focusMetres }));
    return parseSetup(
      formatSetup({
        ...stones,
        subjects: [],
        ground: { ...stones.ground, relief: [] },
        camera: { ...camera, position: [...camera.position], aim: [...camera.aim] },
        lesson: null,
        schemes: [{ ...scheme, camera: null, frames }],
      }),
    );
  };

  it('lie level over level ground where the thin lens has them (half a thousandth of the picture)', () => {
    const setup = bare(6);
    const { focalLengthMm, sensor } = setup.camera;
    const pitch = sensor.widthMm / sensor.pixelsWide;
    for (const { pixels, lines } of linesOf(setup, ['painted'])) {
      // f^2/N |1/s - 1/d| / (1 - f/s) = pixels: 1/d = 1/s +- pixels pitch N (1 - f/s) / f^2; ground 1 m under the lens
      const change = (pixels * pitch * 2 ** 1.5 * (1 - focalLengthMm / 6000)) / focalLengthMm ** 2;
      const places = [1, -1].flatMap((way) => {
        const inverse = 1 / 6000 + way * change;
        const y = 0.5 + (1000 * inverse * focalLengthMm) / sensor.heightMm;
        return inverse > 0 && y < 1 ? [y] : [];
      });
      const heights = lines.flatMap((line) => line.filter((_, i) => i % 2 === 1));
      for (const y of places) expect(heights.some((height) => Math.abs(height - y) < 5e-4)).toBe(true);
      // nothing else but the horizon, beyond which all is as far as the stars
      for (const height of heights)
        expect(Math.min(...[...places, 0.5].map((y) => Math.abs(height - y)))).toBeLessThan(3e-3);
      expect(places.length).toBeGreaterThan(0);
    }
  });

  it('count the sharpest of the frames that are shown, and run along no edge of the picture', () => {
    const setup = bare(6);
    const stack = focusFrames(setup, place, [1.2, 2.4, 6, null]);
    const all = linesOf(
      stack,
      framesOf(stack).map(({ id }) => id),
    ).find(({ pixels }) => pixels === 8);
    expect(all?.lines).toEqual([]);
    for (const { lines } of linesOf(setup, ['painted']))
      for (const line of lines) {
        const xs = line.filter((_, i) => i % 2 === 0);
        expect(Math.max(...xs) - Math.min(...xs)).toBeGreaterThan(0.02);
      }
  });
});
