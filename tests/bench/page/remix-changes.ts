import type { Frame, Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';

const withFrame = (setup: Setup, change: (frame: Frame) => Frame): Setup => {
  const [scheme] = setup.schemes as [Scheme];
  return { ...setup, schemes: [{ ...scheme, frames: scheme.frames.map(change) }] };
};

const withPass = (setup: Setup, change: (pass: Pass) => Partial<Pass>): Setup =>
  withFrame(setup, (frame) => ({
    ...frame,
    passes: frame.passes.map((pass, i) => (i === 0 ? { ...pass, ...change(pass) } : pass)),
  }));

export const withCamera = (setup: Setup, metres: number): Setup => {
  const [east, north, up] = setup.camera.position;
  return { ...setup, camera: { ...setup.camera, position: [east + metres, north, up] } };
};

export const withLamps = (setup: Setup, lamps: number): Setup =>
  withFrame(setup, (frame) => ({ ...frame, passes: frame.passes.slice(0, lamps) }));

/** What a user does to one lamp or to the camera, each time to another value. */
export const changes = {
  level: (setup: Setup, round: number) => withPass(setup, () => ({ levelPercent: 40 + round })),
  gel: (setup: Setup, round: number) =>
    withPass(setup, () => ({ gels: [{ name: 'Warm', shiftMired: 20 + round, transmission: 0.7, colour: null }] })),
  seconds: (setup: Setup, round: number) => withPass(setup, () => ({ off: 3 + 0.1 * round })),
  iso: (setup: Setup, round: number) => withFrame(setup, (frame) => ({ ...frame, iso: 500 + 10 * round })),
  moved: (setup: Setup, round: number) =>
    withPass(setup, ({ waypoints }) => ({
      waypoints: waypoints.map(({ position: [east, north, up], ...rest }) => ({
        ...rest,
        position: [east + 0.05 * (round + 1), north, up],
      })),
    })),
};
