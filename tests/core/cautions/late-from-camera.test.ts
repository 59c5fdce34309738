import { describe, expect, it } from 'vitest';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import { cautionsOfSetup } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A sky frame, then a painted one whose lamp is held 12 m from the camera and on from the first second. */
const night = (delaySeconds: number, painted: object = { aperture: 8 }, pass: object = {}) => {
  const setup = JSON.parse(
    JSON.stringify(
      onePassSetup({
        camera: { position: [0, -12, 1.5], aim: [0, 0, 1] },
        frame: { aperture: 2, iso: 1600 },
        pass: { on: 1, off: 9, waypoints: [{ position: [0, 0, 1], aim: [0, 3, 1] }], ...pass },
      }),
    ),
  );
  const [frame] = setup.schemes[0].frames;
  setup.schemes[0].frames = [
    { ...frame, id: 'sky', name: 'Sky', passes: [] },
    { ...frame, name: 'Painted', delaySeconds, ...painted },
  ];
  return validateSetup(setup);
};
const late = (...what: Parameters<typeof night>) =>
  cautionsOfSetup(night(...what)).find(({ code }) => code === 'late-from-camera');

// the page's own walk: 0.8 m/s in the dark; common practice, no published source
describe('late-from-camera', () => {
  it('tells of a delay that is shorter than the walk, with the one that would do; gone with that one', () => {
    const caution = late(5);
    expect(caution).toMatchObject({ severity: 'warning', passId: 'pass', frameId: 'frame', limit: 6 });
    expect(caution?.value).toBeGreaterThan(9 / 0.8);
    expect(caution?.value).toBeLessThan(2 * (12 / 0.8));
    const delay = Number(/Make the delay (\d+) s/.exec(caution?.message ?? '')?.[1]);
    expect(delay).toBe(Math.ceil((caution?.value ?? 0) - 1));
    expect(late(delay)).toBeUndefined();
    expect(late(delay - 1)).toBeDefined();
  });

  it.each([
    [{ aperture: 8 }],
    [{ iso: 400 }],
    [{ focusMetres: 3 }],
    [{ seconds: 20 }],
    [{ whiteBalance: { kelvin: 3200 } }],
  ])('is told for another %j', (painted) => {
    expect(late(5, painted)?.message).toContain('“Painted” is set otherwise than “Sky”');
  });

  it.each([
    [{}, 'cannot-walk', 'late-from-camera'],
    [{ aperture: 8 }, 'late-from-camera', 'cannot-walk'],
  ])('a lamp 60 m aside in the frame before, the next set as %j: %s, not %s', (next, told, untold) => {
    const setup = night(5, next);
    const [scheme] = setup.schemes as [(typeof setup.schemes)[number]];
    const [sky, painted] = scheme.frames as [(typeof scheme.frames)[number], (typeof scheme.frames)[number]];
    const aside = painted.passes.map((pass) => ({
      ...pass,
      waypoints: pass.waypoints.map((waypoint) => ({
        ...waypoint,
        position: [60, 0, 1] as const,
        aim: [60, 3, 1] as const,
      })),
    }));
    const lit = { ...sky, passes: aside };
    const codes = cautionsOfSetup({ ...setup, schemes: [{ ...scheme, frames: [lit, painted] }] } as typeof setup).map(
      ({ code }) => code,
    );
    expect(codes).toContain(told);
    expect(codes).not.toContain(untold);
  });

  it('is not told where the frames are set alike, nor for a lamp on a stand, nor for the first frame', () => {
    expect(late(5, {})).toBeUndefined();
    expect(late(5, { aperture: 8 }, { held: 'stand' })).toBeUndefined();
    const [scheme] = night(5).schemes;
    const alone = { ...night(5), schemes: [{ ...scheme, frames: scheme?.frames.slice(1) }] };
    const codes = cautionsOfSetup(validateSetup(JSON.parse(JSON.stringify(alone)))).map(({ code }) => code);
    expect(codes).not.toContain('late-from-camera');
  });
});
