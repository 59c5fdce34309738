import { describe, expect, it } from 'vitest';
import { retimedPass } from '../../../core/passes/retimed-pass.ts';
import type { Pass, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { onePassSetup } from '../support/scenes.ts';

const on = 1.3;
const off = 7.9;
/** A pass with so many waypoints at uneven times, walked round and aimed about. */
const setupWith = (count: number): Setup =>
  onePassSetup({
    camera: { position: [0, -6, 1], aim: [0, 0, 1] },
    frame: { seconds: 60 },
    pass: {
      on,
      off,
      waypoints: Array.from({ length: count }, (_, i) => {
        const share = (i / (count - 1)) ** 1.3;
        return { time: on + (off - on) * share, position: [3 * Math.sin(i), -3, 1.1], aim: [share, 0.1 * i, 0.7] };
      }),
    },
  });
const withPass = (setup: Setup, pass: Pass): Setup => ({
  ...setup,
  schemes: setup.schemes.map((scheme) => ({
    ...scheme,
    frames: scheme.frames.map((frame) => ({ ...frame, passes: [pass] })),
  })),
});
const passOf = (setup: Setup) => setup.schemes[0]?.frames[0]?.passes[0] as Pass;
const sourceOf = (setup: Setup) => {
  const [scheme] = setup.schemes;
  if (!scheme) throw new Error('no scheme');
  return JSON.stringify(buildWorld(setup, scheme).frames[0]?.lights[0]?.source);
};

// light adds over time: where a lamp is for which share of its time makes its layer, and nothing else of its time
describe.each([2, 3, 5, 16])('a moving pass with %d waypoints is the same source, and traces nothing', (count) => {
  const setup = setupWith(count);
  const before = sourceOf(setup);
  it('when it lasts longer or shorter, or goes on at another time', () => {
    for (let i = 1; i <= 60; i++) {
      const [from, to] = [0.1 * (i % 7), 2 + 0.37 * i];
      const pass = retimedPass(passOf(setup), from, to);
      expect(pass && sourceOf(withPass(setup, pass)), `lit ${from} to ${to} s`).toBe(before);
    }
  });
  it('when its strokes are more, each as quick', () => {
    for (const strokes of [2, 3, 7]) {
      const pass = { ...passOf(setup), strokes, off: on + strokes * (off - on) };
      expect(sourceOf(withPass(setup, pass))).toBe(before);
    }
  });
  it('but another way is another source', () => {
    const pass = passOf(setup);
    const moved = pass.waypoints.map((w, i) =>
      i === 1 ? { ...w, aim: [w.aim[0], w.aim[1], w.aim[2] + 0.01] as const } : w,
    );
    expect(sourceOf(withPass(setup, { ...pass, waypoints: moved as unknown as Pass['waypoints'] }))).not.toBe(before);
  });
});
