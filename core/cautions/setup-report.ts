import { PassReader, type PassReading } from '../readings/pass-reading.ts';
import type { Scheme, Setup } from '../setup/schema/setup.ts';
import { buildWorld } from '../world/world.ts';
import { cautionsOf } from './all-cautions.ts';
import type { Caution } from './caution.ts';

export interface FrameReport {
  readonly id: string;
  readonly passes: readonly PassReading[];
  readonly cautions: readonly Caution[];
}

export interface SchemeReport {
  readonly id: string;
  readonly name: string;
  readonly frames: readonly FrameReport[];
  /** Those of all frames, in order. */
  readonly cautions: readonly Caution[];
}

/** What `lampfall readings --json` prints; names are kept from version to version. */
export interface SetupReport {
  readonly setup: string;
  readonly schemes: readonly SchemeReport[];
}

/** Readings and cautions of one scheme. */
export const reportScheme = (setup: Setup, scheme: Scheme): SchemeReport => {
  const world = buildWorld(setup, scheme);
  const reader = new PassReader(world);
  const frames = scheme.frames.map((frame, f): FrameReport => {
    const worldFrame = world.frames[f];
    const [passes, cautions]: [PassReading[], Caution[]] = [[], []];
    for (const pass of frame.passes) {
      const light = worldFrame?.lights.find(({ id, source }) => id === pass.id && source.kind === 'lamp');
      const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
      if (!worldFrame || !light || !lamp) continue;
      const reading = reader.read(pass, worldFrame, light);
      passes.push(reading);
      const found = cautionsOf({ world, frame, pass, lamp, light, reading });
      cautions.push(...found.map((caution) => ({ ...caution, frameId: frame.id })));
    }
    return { id: frame.id, passes, cautions };
  });
  return { id: scheme.id, name: scheme.name, frames, cautions: frames.flatMap((frame) => frame.cautions) };
};

/** Readings and cautions of every scheme. */
export const reportSetup = (setup: Setup): SetupReport => ({
  setup: setup.id,
  schemes: setup.schemes.map((scheme) => reportScheme(setup, scheme)),
});
