import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Camera, Position } from '../../../core/setup/schema/setup.ts';
import { clockText } from '../../../core/units/clock.ts';
import { lengthWords } from '../ui/lengths.ts';
import { type PlanView, planHalf, planViewOf, toPlan } from '../ui/plan-view.ts';

/** A question for a place on the ground, such as where a shadow's tip falls. */
export interface Pointing {
  /** Where the user has pointed; null = nowhere yet. Document axes, metres. */
  readonly at: GroundPoint | null;
  /** The answer, once it may be seen; null before. */
  readonly truth: GroundPoint | null;
  readonly onPoint: (place: GroundPoint) => void;
}

/** A place on the ground in words, from the plan's middle, camera at six: "2:30, 4.2 m from the middle". */
export const placeWords = (view: PlanView, place: GroundPoint): string => {
  const [x, y] = toPlan(view, place);
  const hours = ((Math.atan2(x, -y) * 6) / Math.PI + 12) % 12;
  return `${clockText(hours)}, ${lengthWords(Math.hypot(x, y) / view.unitsPerMetre, 1)} from the middle`;
};

/** A question is asked on a wider plan: a shadow may fall beyond lamp and camera. */
const askingShare = 0.6;

/**
 * The plan's view for a question. It holds still while the cross moves on it, and widens when the cross has left it or the
 * answer is shown.
 */
export const askingView = (
  camera: Pick<Camera, 'position' | 'aim'>,
  places: readonly Position[],
  { at, truth }: Pick<Pointing, 'at' | 'truth'>,
): PlanView => {
  const view = planViewOf(camera, places, askingShare);
  const isOutside = (place: GroundPoint) => toPlan(view, place).some((v) => Math.abs(v) > planHalf + 1e-6);
  const outside = [at, truth].flatMap((place) => (place && isOutside(place) ? [place] : []));
  return outside.length === 0
    ? view
    : planViewOf(camera, [...places, ...outside.map(([east, north]): Position => [east, north, 0])]);
};
