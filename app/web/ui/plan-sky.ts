import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { planHalf } from './plan-view.ts';
import { edgePoint, levelOfBearing, turnToDrawing } from './sky-wheel.ts';

/** Something of the sky at the edge of the ground plan. */
export interface EdgeMark {
  readonly kind: 'moon' | 'core' | 'glow';
  /** Where its glyph stands on the drawing. */
  readonly at: GroundPoint;
  /** Unit direction from the plan's middle toward it, on the drawing. */
  readonly toward: GroundPoint;
  readonly text: string;
  readonly textAt: GroundPoint;
  readonly anchor: 'start' | 'end';
  /** Whether it stands low enough to throw shadows worth the name to one side. */
  readonly isSlanting: boolean;
}

/** Higher than that a moon's shadows are about a third as long as things are high, or shorter: our choice. */
const steepDegrees = 70;

/** How far in from the drawing's edge the glyphs stand, and their words beside them. */
const [inset, beside] = [9, 12];

/** Words stand beside the glyph along the upper and lower edge, under or over it along the sides, and stay on the drawing. */
const wordsAt = ([x, y]: GroundPoint): Pick<EdgeMark, 'textAt' | 'anchor'> => {
  const isSide = Math.abs(x) > Math.abs(y);
  if (isSide) {
    const down = y > 0 ? -1 : 1;
    return { textAt: [Math.sign(x) * (planHalf - 3), y + down * (beside + 3) + 4], anchor: x > 0 ? 'end' : 'start' };
  }
  const right = x > 0 ? -1 : 1;
  return { textAt: [x + right * beside, y + 4], anchor: right > 0 ? 'start' : 'end' };
};

/** The mark of a level direction, [east, north] of the scene. */
const edgeMark = (
  kind: EdgeMark['kind'],
  up: GroundPoint,
  level: GroundPoint,
  text: string,
  isSlanting: boolean,
): EdgeMark => {
  const [x, y] = turnToDrawing(up, level);
  const away = Math.max(Math.hypot(x, y), 1e-9);
  const toward: GroundPoint = [x / away, y / away];
  const at = edgePoint(toward, planHalf - inset);
  return { kind, at, toward, text, isSlanting, ...wordsAt(at) };
};

/** The mark of something in the sky. Null where it is not over the horizon. */
export const skyEdgeMark = (kind: 'moon' | 'core', up: GroundPoint, toward: Vec3): EdgeMark | null => {
  const [x, y, z] = toward;
  if (y <= 0) return null;
  const degrees = Math.round((Math.atan2(y, Math.hypot(x, z)) * 180) / Math.PI);
  return edgeMark(kind, up, [x, -z], `${kind} ${degrees}°`, degrees <= steepDegrees);
};

/** The mark of a town's glow. */
export const glowEdgeMark = (up: GroundPoint, bearingDegrees: number, northDegrees: number, name: string): EdgeMark =>
  edgeMark('glow', up, levelOfBearing(bearingDegrees, northDegrees), name || 'glow', false);
