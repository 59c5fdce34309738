import type { Vec3 } from '../geometry/vec.ts';
import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { feetOf } from '../world/holder.ts';
import { placeAtTime, type World, type WorldFrame, type WorldLight } from '../world/world.ts';
import { cameraFeet } from './camera-feet.ts';
import { type HeldPass, heldInOrder } from './frame-order.ts';
import type { LampSource } from './seen-body.ts';
import { leavesCameraAt, wasAtCameraSince } from './set-off.ts';
import { type WayOnFoot, wayOnFoot } from './way-on-foot.ts';

/** How a pass fits into what one person can do. */
export interface PassTiming {
  /** How long, during the pass, the lens sees whoever holds the lamp; 0 for a stand. */
  readonly visibleSeconds: number;
  /**
   * From where the pass before ended, or from the camera where a frame had to be set by hand in between; null for the first
   * that is held, for a stand, and where no way was found.
   */
  readonly walkSeconds: number | null;
  /** Whether it is from the camera. */
  readonly isFromCamera: boolean;
  /** Time there is less time it takes; negative = one comes too late. null where `walkSeconds` is. */
  readonly slackSeconds: number | null;
  /** Names of the hazards that the walk goes round: without them it would be shorter. */
  readonly roundHazards: readonly string[];
}

/** The way on foot to a pass from the one that was held before it. */
export interface Walk extends WayOnFoot {
  /** The pass before; null = the camera, where somebody had to go back in between to set a frame. */
  readonly from: { readonly frameId: string; readonly passId: string; readonly name: string } | null;
  /** Whether both lie in one frame. */
  readonly isWithinFrame: boolean;
  /** From when one can set out to the start of this one; negative where the pass before is still on then. */
  readonly availableSeconds: number;
}

/** A pass in its turn, with where one stands. */
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

const walkTo = (turn: Turn, before: Turn, setup: Setup, scheme: Scheme, world: World): Walk | null => {
  const isFromCamera = wasAtCameraSince(scheme, before.frame, turn.frame);
  const start = isFromCamera ? cameraFeet(world) : before.endFeet;
  const way = wayOnFoot(start, turn.startFeet, setup, world);
  if (!way) return null;
  const { frame, pass } = before;
  return {
    from: isFromCamera ? null : { frameId: frame.id, passId: pass.id, name: pass.name },
    isWithinFrame: frame === turn.frame,
    availableSeconds: turn.startSeconds - (isFromCamera ? leavesCameraAt(scheme, turn.frame) : before.endSeconds),
    ...way,
  };
};

/**
 * The way to each pass that is held in the hand, from the one held before it, across frames too, as one person walks who
 * does all of them; by way of the camera where a frame has to be set by hand in between. Stands are put up before the first
 * shutter and switched from afar, so nobody walks to them.
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
    ofFrame.set(turn.pass, before ? walkTo(turn, before, setup, scheme, world) : null);
  });
  return (frame, pass) => walks.get(frame)?.get(pass) ?? null;
};

/** @param visibleSeconds of whoever holds the lamp */
export const passTiming = (walk: Walk | null, visibleSeconds: number, hazards: Setup['hazards']): PassTiming => ({
  visibleSeconds,
  walkSeconds: walk?.seconds ?? null,
  isFromCamera: walk !== null && walk.from === null,
  slackSeconds: walk ? walk.availableSeconds - walk.seconds : null,
  roundHazards: hazards.flatMap(({ id, name }) => (walk?.roundHazardIds.includes(id) ? [name] : [])),
});
