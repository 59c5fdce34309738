import { type ClippedReading, clippedReadings } from '../readings/clipped-reading.ts';
import { type DepthReading, depthReading } from '../readings/depth-reading.ts';
import { type FrameReading, frameReading } from '../readings/frame-reading.ts';
import { visibleRange } from '../readings/look-around.ts';
import { PassReader, type PassReading, type Surroundings } from '../readings/pass-reading.ts';
import { type StarReading, starReading } from '../readings/star-reading.ts';
import {
  type FrameOrder,
  frameOrders,
  type PassTiming,
  passTiming,
  type Walk,
  walksOf,
} from '../readings/timing-reading.ts';
import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { worldFromDocument } from '../world/axes.ts';
import { buildWorld, type World, type WorldFrame } from '../world/world.ts';
import { cautionsOf } from './all-cautions.ts';
import type { Caution } from './caution.ts';
import { enclosureOf } from './lamp-place.ts';

/** A pass among the others of its scheme. */
export interface TimedPassReading extends PassReading {
  readonly timing: PassTiming;
}

export interface FrameReport extends FrameReading {
  readonly id: string;
  /** When it is exposed, frames in the order listed. */
  readonly order: FrameOrder;
  readonly passes: readonly TimedPassReading[];
  /** null when the frame is focused nearer than the lens can. */
  readonly depth: DepthReading | null;
  readonly stars: StarReading;
  readonly clipped: ClippedReading;
  readonly cautions: readonly Caution[];
}

/** What is told of one pass. */
export interface PassReport {
  readonly reading: PassReading;
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

const surroundingsOf = ({ patch, place, walking }: Setup): Surroundings => ({
  patchCorners: patch ? patch.corners.map(worldFromDocument) : null,
  ambient: place,
  clothes: walking.clothes,
});

/** Reading and cautions of one pass; null when its lamp is not there. */
const readPass = (
  setup: Setup,
  world: World,
  reader: PassReader,
  frame: Frame,
  worldFrame: WorldFrame,
  pass: Pass,
  walk: Walk | null,
): PassReport | null => {
  const light = worldFrame.lights.find(({ id, source }) => id === pass.id && source.kind === 'lamp');
  const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
  if (!light || !lamp) return null;
  const reading = reader.read({ pass, lamp, frame, worldFrame, light, wantedStops: setup.nightLevelStops });
  const cautions = cautionsOf({ world, frame, worldFrame, pass, lamp, light, reading, walk });
  return { reading, cautions: cautions.map((caution) => ({ ...caution, frameId: frame.id })) };
};

/** Readings and cautions of a frame's passes. */
const reportPasses = (
  setup: Setup,
  world: World,
  reader: PassReader,
  frame: Frame,
  worldFrame: WorldFrame,
  walkTo: (frame: Frame, pass: Pass) => Walk | null,
) => {
  const reports = frame.passes.flatMap((pass) => {
    const walk = walkTo(frame, pass);
    const report = readPass(setup, world, reader, frame, worldFrame, pass, walk);
    if (!report) return [];
    const { reading, cautions } = report;
    const timing = passTiming(walk, reading.person?.visibleSeconds ?? 0);
    return [{ reading: { ...reading, timing }, cautions }];
  });
  return { passes: reports.map(({ reading }) => reading), cautions: reports.flatMap(({ cautions }) => cautions) };
};

/** The same for one pass of a scheme alone, without the rest of the scheme and the walk to it; null when it is not there. */
export const reportPass = (setup: Setup, scheme: Scheme, frameId: string, passId: string): PassReport | null => {
  const world = buildWorld(setup, scheme);
  const at = scheme.frames.findIndex(({ id }) => id === frameId);
  const [frame, worldFrame] = [scheme.frames[at], world.frames[at]];
  const pass = frame?.passes.find(({ id }) => id === passId);
  if (!frame || !worldFrame || !pass) return null;
  return readPass(setup, world, new PassReader(world, surroundingsOf(setup)), frame, worldFrame, pass, null);
};

/** Readings and cautions of one scheme. */
export const reportScheme = (setup: Setup, scheme: Scheme): SchemeReport => {
  const world = buildWorld(setup, scheme);
  const camera = scheme.camera ?? setup.camera;
  const surroundings = surroundingsOf(setup);
  const reader = new PassReader(world, surroundings);
  const range = visibleRange(world);
  const clipped = clippedReadings(world);
  const orders = frameOrders(scheme);
  const walkTo = walksOf(setup, scheme, world);
  const frames = scheme.frames.map((frame, f): FrameReport => {
    const worldFrame = world.frames[f] as WorldFrame;
    const { passes, cautions } = reportPasses(setup, world, reader, frame, worldFrame, walkTo);
    const doses = passes.map((pass) => ({ ...pass, subjectId: pass.rim.subjectId }));
    return {
      id: frame.id,
      order: orders[f] as FrameOrder,
      passes,
      cautions,
      ...frameReading(world, worldFrame, doses, surroundings.patchCorners),
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
