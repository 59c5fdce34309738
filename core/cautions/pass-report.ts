import { ambientWays } from '../readings/ambient-ways.ts';
import { PassReader, type Surroundings } from '../readings/pass-reader.ts';
import type { PassReading } from '../readings/pass-reading.ts';
import type { Walk } from '../readings/timing-reading.ts';
import type { Frame, Lamp, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { worldFromDocument } from '../world/axes.ts';
import { buildWorld, type World, type WorldFrame } from '../world/world.ts';
import { cautionsOf } from './all-cautions.ts';
import type { Caution, ReadPass } from './caution.ts';
import { lampLight } from './lamp-light.ts';

/** What is told of one pass. */
export interface PassReport {
  readonly reading: PassReading;
  readonly cautions: readonly Caution[];
}

/** What the passes of a scheme are read against beside its world. */
export const surroundingsOf = ({ patch, place, walking }: Setup, { frames }: World): Surroundings => ({
  patchCorners: patch ? patch.corners.map(worldFromDocument) : null,
  ways: ambientWays(place, frames[0] as WorldFrame),
  clothes: walking.clothes,
});

/** One pass with its reading and its own cautions; `walk` is the way to it, null where there is none to tell. */
export const readPass = (
  setup: Setup,
  world: World,
  reader: PassReader,
  frame: Frame,
  worldFrame: WorldFrame,
  pass: Pass,
  walk: Walk | null,
): ReadPass => {
  const light = lampLight(worldFrame, pass.id);
  const lamp = setup.lamps.find(({ id }) => id === pass.lampId) as Lamp;
  const reading = reader.read({ pass, lamp, frame, worldFrame, light, wantedStops: setup.nightLevelStops });
  const passCase = { world, frame, worldFrame, pass, lamp, light, reading, walk };
  return { ...passCase, cautions: cautionsOf(passCase).map((caution) => ({ ...caution, frameId: frame.id })) };
};

/** Reading and cautions of one pass of a scheme alone, without the rest of the scheme and the walk to it; null when it is not there. */
export const reportPass = (setup: Setup, scheme: Scheme, frameId: string, passId: string): PassReport | null => {
  const world = buildWorld(setup, scheme);
  const at = scheme.frames.findIndex(({ id }) => id === frameId);
  const [frame, worldFrame] = [scheme.frames[at], world.frames[at]];
  const pass = frame?.passes.find(({ id }) => id === passId);
  if (!frame || !worldFrame || !pass) return null;
  const reader = new PassReader(world, surroundingsOf(setup, world));
  const { reading, cautions } = readPass(setup, world, reader, frame, worldFrame, pass, null);
  return { reading, cautions };
};
