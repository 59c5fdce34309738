import { add } from '../geometry/vec.ts';
import { burntPart } from '../readings/burnt-part.ts';
import { type ClippedReading, clippedReading } from '../readings/clipped-reading.ts';
import { type DepthReading, depthReading } from '../readings/depth-reading.ts';
import { type FrameOrder, frameOrders } from '../readings/frame-order.ts';
import { type FrameReading, frameReading } from '../readings/frame-reading.ts';
import { visibleRange } from '../readings/look-around.ts';
import { type MoonReading, moonReading } from '../readings/moon-reading.ts';
import { type OutlineReading, outlineReading } from '../readings/outline-reading.ts';
import { PassReader } from '../readings/pass-reader.ts';
import type { PassReading } from '../readings/pass-reading.ts';
import { passSubject } from '../readings/pass-subject.ts';
import { type SkyReading, skyLook, skyReading } from '../readings/sky-reading.ts';
import { type SmallPicture, smallPictures } from '../readings/small-picture.ts';
import { type StarReading, starReading } from '../readings/star-reading.ts';
import { starViewOf } from '../readings/star-view.ts';
import { type PassTiming, passTiming, walksOf } from '../readings/timing-reading.ts';
import { unlitLevel } from '../readings/unlit-level.ts';
import { type WalkLine, walkLines } from '../readings/walk-lines.ts';
import type { Scheme, Setup } from '../setup/schema/setup.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import { buildWorld, type World, type WorldFrame } from '../world/world.ts';
import { cautionsOfScheme } from './all-cautions.ts';
import { cameraInside } from './camera-inside.ts';
import type { Caution, FrameCase, ReadPass } from './caution.ts';
import { readPass, surroundingsOf } from './pass-report.ts';

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
  /** Open level land of 18 % that no lamp lights, stops from mid-grey; null in the dark. */
  readonly unlitStops: number | null;
  /** The subjects that the scheme is about, or that the camera looks at, as far as they stand before the sky. */
  readonly outlines: readonly OutlineReading[];
  readonly clipped: ClippedReading;
  readonly cautions: readonly Caution[];
}

export interface SchemeReport {
  readonly id: string;
  readonly name: string;
  readonly frames: readonly FrameReport[];
  /** The moon as a light; null where it gives none. */
  readonly moon: MoonReading | null;
  /** The sky of the hour; null where it is plain. */
  readonly sky: SkyReading | null;
  /** The ways on foot of one person who does all passes: from the camera, from pass to pass, and back. */
  readonly walks: readonly WalkLine[];
  /** Those of the camera, then those of all frames, in order. */
  readonly cautions: readonly Caution[];
}

/** What `lampfall readings --json` prints; names are kept from version to version. */
export interface SetupReport {
  readonly setup: string;
  readonly schemes: readonly SchemeReport[];
}

/** Indices of the subjects that passes are about; of that which the camera looks at where there are none. */
const aboutSubjects = (world: World, passes: readonly ReadPass[]): number[] => {
  const { stage, view } = world;
  const ids = new Set(passes.map(({ reading }) => reading.rim.subjectId));
  const lit = stage.subjects.flatMap(({ id }, s) => (ids.has(id) ? [s] : []));
  if (lit.length > 0) return lit;
  const ahead = surfaceAlong(stage, view.position, view.forward);
  const subject = passSubject(world, add(view.position, view.forward), ahead);
  return subject >= 0 ? [subject] : [];
};

/** Readings and cautions of one scheme. */
export const reportScheme = (setup: Setup, scheme: Scheme): SchemeReport => {
  const world = buildWorld(setup, scheme);
  const camera = scheme.camera ?? setup.camera;
  const surroundings = surroundingsOf(setup, world);
  const reader = new PassReader(world, surroundings);
  const range = visibleRange(world);
  const pictures = smallPictures(world);
  const orders = frameOrders(scheme);
  const walkTo = walksOf(setup, scheme, world);
  const read = scheme.frames.map((frame, f) =>
    frame.passes.map((pass) =>
      readPass(setup, world, reader, frame, world.frames[f] as WorldFrame, pass, walkTo(frame, pass)),
    ),
  );
  const about = aboutSubjects(world, read.flat());
  const cases = scheme.frames.map((frame, f): FrameCase => {
    const [worldFrame, picture] = [world.frames[f] as WorldFrame, pictures[f] as SmallPicture];
    return {
      frame,
      worldFrame,
      passes: read[f] as ReadPass[],
      depth: depthReading(camera, frame, range),
      stars: starReading(camera, frame, starViewOf(world)),
      outlines: about.flatMap((subject) => outlineReading(world, worldFrame, subject) ?? []),
      clipped: clippedReading(picture),
      burnt: burntPart(world, picture),
      picture,
    };
  });
  const walks = walkLines(setup, scheme, world, walkTo);
  const across = cautionsOfScheme({ setup, scheme, world, frames: cases, walks, sky: skyLook(world) });
  const frames = cases.map(({ frame, worldFrame, passes, depth, stars, outlines, clipped }, f): FrameReport => {
    const readings = passes.map(({ reading, walk }) => ({
      ...reading,
      timing: passTiming(walk, reading.person?.visibleSeconds ?? 0, setup.hazards),
    }));
    const doses = readings.map((reading) => ({ ...reading, subjectId: reading.rim.subjectId }));
    return {
      id: frame.id,
      order: orders[f] as FrameOrder,
      passes: readings,
      cautions: [
        ...passes.flatMap(({ cautions }) => cautions),
        ...across.filter(({ frameId }) => frameId === frame.id),
      ],
      ...frameReading(world, worldFrame, doses, surroundings.patchCorners),
      depth,
      stars,
      unlitStops: unlitLevel(worldFrame),
      outlines,
      clipped,
    };
  });
  return {
    id: scheme.id,
    name: scheme.name,
    frames,
    moon: moonReading(world, setup.place),
    sky: skyReading(world),
    walks,
    cautions: [...cameraInside(world), ...frames.flatMap((frame) => frame.cautions)],
  };
};

/** Readings and cautions of every scheme. */
export const reportSetup = (setup: Setup): SetupReport => ({
  setup: setup.id,
  schemes: setup.schemes.map((scheme) => reportScheme(setup, scheme)),
});
