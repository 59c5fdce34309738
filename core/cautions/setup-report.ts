import { type ClippedReading, clippedReadings } from '../readings/clipped-reading.ts';
import { type DepthReading, depthReading } from '../readings/depth-reading.ts';
import { visibleRange } from '../readings/look-around.ts';
import { PassReader, type PassReading } from '../readings/pass-reading.ts';
import { type StarReading, starReading } from '../readings/star-reading.ts';
import type { Frame, Scheme, Setup } from '../setup/schema/setup.ts';
import { buildWorld, type World, type WorldFrame } from '../world/world.ts';
import { cautionsOf } from './all-cautions.ts';
import type { Caution } from './caution.ts';
import { enclosureOf } from './lamp-place.ts';

export interface FrameReport {
  readonly id: string;
  readonly passes: readonly PassReading[];
  /** null when the frame is focused nearer than the lens can. */
  readonly depth: DepthReading | null;
  readonly stars: StarReading;
  readonly clipped: ClippedReading;
  readonly cautions: readonly Caution[];
}

export interface SchemeReport {
  readonly id: string;
  readonly name: string;
  readonly frames: readonly FrameReport[];
  /** Those of the camera, then those of all frames, in order. */
  readonly cautions: readonly Caution[];
}

/** What `lampfall readings --json` prints; names are kept from version to version. */
export interface SetupReport {
  readonly setup: string;
  readonly schemes: readonly SchemeReport[];
}

/** The camera stands inside something solid: the picture is black, whatever the lamps do. */
const cameraInside = (world: World): Caution[] => {
  const enclosure = enclosureOf(world.stage, world.view.position);
  const subject = enclosure && world.stage.subjects[enclosure.subject];
  if (!subject) return [];
  const value = enclosure.depthMetres;
  const message = `The camera is inside “${subject.name}”, about ${value.toFixed(2)} m deep: the picture is black. Move it clear.`;
  return [{ code: 'inside-subject', severity: 'danger', message, value, limit: 0 }];
};

/** Readings and cautions of a frame's passes. */
const reportPasses = (setup: Setup, world: World, reader: PassReader, frame: Frame, worldFrame: WorldFrame) => {
  const [passes, cautions]: [PassReading[], Caution[]] = [[], []];
  for (const pass of frame.passes) {
    const light = worldFrame.lights.find(({ id, source }) => id === pass.id && source.kind === 'lamp');
    const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
    if (!light || !lamp) continue;
    const reading = reader.read({ pass, lamp, frame, worldFrame, light, wantedStops: setup.nightLevelStops });
    passes.push(reading);
    const found = cautionsOf({ world, frame, worldFrame, pass, lamp, light, reading });
    cautions.push(...found.map((caution) => ({ ...caution, frameId: frame.id })));
  }
  return { passes, cautions };
};

/** Readings and cautions of one scheme. */
export const reportScheme = (setup: Setup, scheme: Scheme): SchemeReport => {
  const world = buildWorld(setup, scheme);
  const camera = scheme.camera ?? setup.camera;
  const reader = new PassReader(world);
  const range = visibleRange(world);
  const clipped = clippedReadings(world);
  const frames = scheme.frames.map((frame, f): FrameReport => {
    const worldFrame = world.frames[f] as WorldFrame;
    return {
      id: frame.id,
      ...reportPasses(setup, world, reader, frame, worldFrame),
      depth: depthReading(camera, frame, range),
      stars: starReading(camera, frame),
      clipped: clipped[f] as ClippedReading,
    };
  });
  return {
    id: scheme.id,
    name: scheme.name,
    frames,
    cautions: [...cameraInside(world), ...frames.flatMap((frame) => frame.cautions)],
  };
};

/** Readings and cautions of every scheme. */
export const reportSetup = (setup: Setup): SetupReport => ({
  setup: setup.id,
  schemes: setup.schemes.map((scheme) => reportScheme(setup, scheme)),
});
