import type { GroundPoint } from '../geometry/hull.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { exactSeconds } from '../units/third-stops.ts';
import { detourRatio, shortestWalk } from '../walk/walk.ts';
import { feetOf } from '../world/holder.ts';
import { placeAtTime, type World, type WorldFrame, type WorldLight } from '../world/world.ts';
import { hazardFootprints, hazardsOn } from './hazard-ground.ts';
import type { LampSource } from './seen-body.ts';
import { footprintsBetween, onLevel, pictureWedge } from './walk-ground.ts';

/** When a frame is exposed if all frames follow each other as listed, each after its delay. */
export interface FrameOrder {
  /** 1 for the first. */
  readonly number: number;
  /** The shutter opens and closes so many seconds after it first opened. Marked times count as what they are: 30 s is 32. */
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** How a pass fits into what one person can do. */
export interface PassTiming {
  /** How long, during the pass, the lens sees whoever holds the lamp; 0 for a stand. */
  readonly visibleSeconds: number;
  /** From where the pass before ended; null for the first that is held, for a stand, and where no way was found. */
  readonly walkSeconds: number | null;
  /** Time there is less time it takes; negative = one comes too late. null where `walkSeconds` is. */
  readonly slackSeconds: number | null;
  /** Names of the hazards that the walk goes round: without them it would be shorter. */
  readonly roundHazards: readonly string[];
}

/** The way on foot to a pass from the one that was held before it. */
export interface Walk {
  readonly fromFrameId: string;
  readonly fromPassId: string;
  readonly fromName: string;
  /** Whether both lie in one frame. */
  readonly isWithinFrame: boolean;
  /** What one walks, detours included. */
  readonly metres: number;
  readonly seconds: number;
  /** From the end of the pass before to the start of this one; negative where they overlap. */
  readonly availableSeconds: number;
  /** The shortest way, [east, north]. */
  readonly points: readonly GroundPoint[];
  /** Ids of the hazards that it leads through, because it begins or ends in them or no way round them was found. */
  readonly hazardIds: readonly string[];
  /** Those that it goes round, which lie on the shortest way without hazards. */
  readonly roundHazardIds: readonly string[];
}

/** Start and end of each frame, in order. */
export const frameOrders = ({ frames }: Pick<Scheme, 'frames'>): FrameOrder[] => {
  let now = 0;
  return frames.map(({ delaySeconds, seconds }, f) => {
    // the delay of the first comes before the first shutter, from which time counts
    const startSeconds = f === 0 ? 0 : now + delaySeconds;
    now = startSeconds + exactSeconds(seconds);
    return { number: f + 1, startSeconds, endSeconds: now };
  });
};

/** A pass held in the hand, in running order; seconds from the first shutter. */
export interface HeldPass {
  readonly frame: Frame;
  readonly pass: Pass;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** The passes that are held in the hand, in the order in which one person does them, across frames too. */
export const heldInOrder = (scheme: Pick<Scheme, 'frames'>): HeldPass[] => {
  const orders = frameOrders(scheme);
  const held = scheme.frames.flatMap((frame, f) => {
    const opens = (orders[f] as FrameOrder).startSeconds;
    return frame.passes.flatMap((pass): HeldPass[] =>
      pass.held === 'hand' ? [{ frame, pass, startSeconds: opens + pass.on, endSeconds: opens + pass.off }] : [],
    );
  });
  return held.sort((a, b) => a.startSeconds - b.startSeconds);
};

/** The same with where one stands. */
export interface Turn extends HeldPass {
  /** Where one stands when the lamp goes on, and when it goes off. */
  readonly startFeet: Vec3;
  readonly endFeet: Vec3;
}

/** The passes that are held in the hand, in the order in which they are done. */
export const turnsOf = (scheme: Scheme, { stage, frames }: World): Turn[] =>
  heldInOrder(scheme).map((held): Turn => {
    const { frame, pass } = held;
    const { lights } = frames[scheme.frames.indexOf(frame)] as WorldFrame;
    const isItsOwn = ({ id, source }: WorldLight) => id === pass.id && source.kind === 'lamp';
    const source = (lights.find(isItsOwn) as WorldLight).source as LampSource;
    const feet = (seconds: number) => feetOf(stage, placeAtTime(source, pass, seconds));
    return { ...held, startFeet: feet(pass.on), endFeet: feet(pass.off) };
  });

/** The way on foot between two places where one stands, world metres; null where none leads there. */
export const wayOnFoot = (
  from: Vec3,
  to: Vec3,
  setup: Setup,
  { stage, view }: World,
): Pick<Walk, 'metres' | 'seconds' | 'points' | 'hazardIds' | 'roundHazardIds'> | null => {
  const { walking } = setup;
  const ends = [onLevel(from), onLevel(to)] as const;
  const [east, north] = onLevel(view.position);
  // so far that the way round its far end is never the shorter one
  const far = 100 + 4 * ends.reduce((sum, end) => sum + Math.hypot(end[0] - east, end[1] - north), 0);
  const picture = walking.keepsOutOfPicture ? pictureWedge(view, far) : null;
  const things = footprintsBetween(stage, setup, [from, to]);
  const around = [...things, ...hazardFootprints(setup.hazards, ends)];
  // where both can't be had, one walks through the picture rather than through a bog
  const way =
    shortestWalk(...ends, around, picture) ??
    shortestWalk(...ends, around, null) ??
    shortestWalk(...ends, things, picture);
  if (!way) return null;
  const metres = way.metres * detourRatio;
  const hazardIds = hazardsOn(setup.hazards, way.points).map(({ id }) => id);
  const straight = setup.hazards.length > 0 ? shortestWalk(...ends, things, picture) : null;
  const met = straight ? hazardsOn(setup.hazards, straight.points).map(({ id }) => id) : [];
  return {
    metres,
    seconds: metres / walking.metresPerSecond,
    points: way.points,
    hazardIds,
    roundHazardIds: met.filter((id) => !hazardIds.includes(id)),
  };
};

const walkTo = (turn: Turn, before: Turn, setup: Setup, world: World): Walk | null => {
  const way = wayOnFoot(before.endFeet, turn.startFeet, setup, world);
  if (!way) return null;
  return {
    fromFrameId: before.frame.id,
    fromPassId: before.pass.id,
    fromName: before.pass.name,
    isWithinFrame: before.frame === turn.frame,
    availableSeconds: turn.startSeconds - before.endSeconds,
    ...way,
  };
};

/**
 * The way to each pass that is held in the hand, from the one held before it, across frames too, as one person walks who
 * does all of them. Stands are put up before the first shutter and switched from afar, so nobody walks to them.
 *
 * @returns asks for the walk to a pass of a frame; null for the first, for stands, and where no way leads there
 */
export const walksOf = (setup: Setup, scheme: Scheme, world: World): ((frame: Frame, pass: Pass) => Walk | null) => {
  const turns = turnsOf(scheme, world);
  const walks = new Map<Frame, Map<Pass, Walk | null>>();
  turns.forEach((turn, i) => {
    const before = turns[i - 1];
    const ofFrame = walks.get(turn.frame) ?? new Map<Pass, Walk | null>();
    walks.set(turn.frame, ofFrame);
    ofFrame.set(turn.pass, before ? walkTo(turn, before, setup, world) : null);
  });
  return (frame, pass) => walks.get(frame)?.get(pass) ?? null;
};

/** @param visibleSeconds of whoever holds the lamp */
export const passTiming = (walk: Walk | null, visibleSeconds: number, hazards: Setup['hazards']): PassTiming => ({
  visibleSeconds,
  walkSeconds: walk?.seconds ?? null,
  slackSeconds: walk ? walk.availableSeconds - walk.seconds : null,
  roundHazards: hazards.flatMap(({ id, name }) => (walk?.roundHazardIds.includes(id) ? [name] : [])),
});
