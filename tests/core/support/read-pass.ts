import { PassReader } from '../../../core/readings/pass-reader.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import type { Frame, Lamp, Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type World, type WorldFrame, type WorldLight } from '../../../core/world/world.ts';

/** The only scheme, frame, pass and lamp of a setup of one pass, and its world. */
export interface OnlyPass {
  readonly world: World;
  readonly frame: Frame;
  readonly worldFrame: WorldFrame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly light: WorldLight;
}

export const onlyPassOf = (setup: Setup): OnlyPass => {
  const scheme = setup.schemes[0] as Scheme;
  const world = buildWorld(setup, scheme);
  const frame = scheme.frames[0] as Frame;
  const worldFrame = world.frames[0] as WorldFrame;
  const pass = frame.passes[0] as Pass;
  const lamp = setup.lamps.find(({ id }) => id === pass.lampId) as Lamp;
  return { world, frame, worldFrame, pass, lamp, light: worldFrame.lights[0] as WorldLight };
};

/** All readings of the only pass, as the report has them. */
export const readPass = (setup: Setup): PassReading => {
  const { world, ...found } = onlyPassOf(setup);
  return new PassReader(world).read({ ...found, wantedStops: setup.nightLevelStops });
};
