import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import type { World } from '../world/world.ts';
import { cameraFeet } from './camera-feet.ts';
import { leavesCameraAt, wasAtCameraSince } from './set-off.ts';
import { type Turn, turnsOf, type Walk } from './timing-reading.ts';
import { type WayOnFoot, wayOnFoot } from './way-on-foot.ts';

/** A pass by its frame's id and its own. */
export interface PassKey {
  readonly frameId: string;
  readonly passId: string;
}

/** A way on foot of a night's round, for a plan: from the camera to the first pass, from pass to pass, and back. */
export interface WalkLine extends WayOnFoot {
  /** null = the camera. */
  readonly from: PassKey | null;
  readonly to: PassKey | null;
  /**
   * From the camera one sets out as the delay begins of the last frame that is set by hand. null for ways back to it, which
   * nothing waits for.
   */
  readonly availableSeconds: number | null;
}

const keyOf = ({ frame, pass }: Pick<Turn, 'frame' | 'pass'>): PassKey => ({ frameId: frame.id, passId: pass.id });

/**
 * All ways that one person walks who does a scheme's passes: from behind the camera, where the shutter is set off, to the
 * first that is held in the hand, on from each to the next, by way of the camera where a frame is set by hand in between,
 * and from the last back behind it. Ways that are not there, as none leads there, are left out.
 *
 * @param walkTo the ways from pass to pass, as `walksOf` has them
 */
export const walkLines = (
  setup: Setup,
  scheme: Scheme,
  world: World,
  walkTo: (frame: Frame, pass: Pass) => Walk | null,
): WalkLine[] => {
  const turns = turnsOf(scheme, world);
  const camera = cameraFeet(world);
  const backFrom = (turn: Turn): WalkLine[] => {
    const way = wayOnFoot(turn.endFeet, camera, setup, world);
    return way ? [{ from: keyOf(turn), to: null, availableSeconds: null, ...way }] : [];
  };
  const outTo = (turn: Turn): WalkLine[] => {
    const way = wayOnFoot(camera, turn.startFeet, setup, world);
    const availableSeconds = turn.startSeconds - leavesCameraAt(scheme, turn.frame);
    return way ? [{ from: null, to: keyOf(turn), availableSeconds, ...way }] : [];
  };
  const onTo = (turn: Turn): WalkLine[] => {
    const walk = walkTo(turn.frame, turn.pass);
    if (!walk) return [];
    const { from, isWithinFrame: _, ...rest } = walk;
    return [{ ...rest, from: from && { frameId: from.frameId, passId: from.passId }, to: keyOf(turn) }];
  };
  return turns.flatMap((turn, i): WalkLine[] => {
    const before = turns[i - 1];
    const isByCamera = before && wasAtCameraSince(scheme, before.frame, turn.frame);
    const isLast = i === turns.length - 1;
    return [
      ...(isByCamera ? backFrom(before) : []),
      ...(before ? onTo(turn) : outTo(turn)),
      ...(isLast ? backFrom(turn) : []),
    ];
  });
};
