import type { GroundPoint } from '../geometry/hull.ts';
import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import type { World } from '../world/world.ts';
import { cameraFeet } from './camera-feet.ts';
import { leavesCameraAt } from './set-off.ts';
import { type Turn, turnsOf, type Walk, wayOnFoot } from './timing-reading.ts';

/** A pass by its frame's id and its own. */
export interface PassKey {
  readonly frameId: string;
  readonly passId: string;
}

/** A way on foot of a night's round, for a plan: from the camera to the first pass, from pass to pass, and back. */
export interface WalkLine {
  /** null = the camera. */
  readonly from: PassKey | null;
  readonly to: PassKey | null;
  /** What one walks, detours included. */
  readonly metres: number;
  readonly seconds: number;
  /** The first begins with the delay of the last frame that is set by hand before it. null for the way back, which nothing waits for. */
  readonly availableSeconds: number | null;
  /** The shortest way, [east, north]. */
  readonly points: readonly GroundPoint[];
  /** Ids of the hazards that it leads through. */
  readonly hazardIds: readonly string[];
  /** Ids of those that it goes round: without them it would be shorter. */
  readonly roundHazardIds: readonly string[];
}

const keyOf = ({ frame, pass }: Pick<Turn, 'frame' | 'pass'>): PassKey => ({ frameId: frame.id, passId: pass.id });

/**
 * All ways that one person walks who does a scheme's passes: from behind the camera, where the shutter is set off, to the
 * first that is held in the hand, on from each to the next, and from the last back behind the camera. Ways that are not
 * there, as none leads there, are left out.
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
  const [first, last] = [turns[0], turns.at(-1)];
  if (!first || !last) return [];
  const camera = cameraFeet(world);
  const out = wayOnFoot(camera, first.startFeet, setup, world);
  const back = wayOnFoot(last.endFeet, camera, setup, world);
  return [
    ...(out
      ? [
          {
            from: null,
            to: keyOf(first),
            availableSeconds: first.startSeconds - leavesCameraAt(scheme, first.frame),
            ...out,
          },
        ]
      : []),
    ...turns.flatMap((turn): WalkLine[] => {
      const walk = walkTo(turn.frame, turn.pass);
      if (!walk) return [];
      const { fromFrameId, fromPassId, metres, seconds, availableSeconds, points, hazardIds, roundHazardIds } = walk;
      const from = { frameId: fromFrameId, passId: fromPassId };
      return [{ from, to: keyOf(turn), metres, seconds, availableSeconds, points, hazardIds, roundHazardIds }];
    }),
    ...(back ? [{ from: keyOf(last), to: null, availableSeconds: null, ...back }] : []),
  ];
};
