import type { GroundPoint } from '../../geometry/hull.ts';
import type { Shape } from '../sheet/shapes.ts';
import type { Box } from './plan-frame.ts';

/** The one stroke weight of the plan, millimetres. */
export const stroke = 0.3;
/** Dashes of ways on foot, and of ways of moving lamps: length and gap. */
export const walkDash = [0.9, 1.3] as const;
export const wayDash = [2.6, 1.2] as const;

/** The cross of the mark. */
export const crossAt = ([x, y]: GroundPoint, half = 2.2): Shape => ({
  kind: 'path',
  path: `M${x - half} ${y}L${x + half} ${y}M${x} ${y - half}L${x} ${y + half}`,
  width: stroke,
  fill: 'none',
});

const text = ([x, y]: GroundPoint): string => `${x.toFixed(3)} ${y.toFixed(3)}`;

/** SVG path through places on paper: two or more, three or more where it is closed. */
export const openPath = (places: readonly GroundPoint[]): string => `M${places.map(text).join('L')}`;
export const closedPath = (places: readonly GroundPoint[]): string => `${openPath(places)}Z`;

/** A head of an arrow at a place, pointing along a way that is not nought; sides of about 2.4 mm. */
export const arrowHead = ([x, y]: GroundPoint, [dx, dy]: GroundPoint): Shape => {
  const length = Math.hypot(dx, dy);
  const [ux, uy] = [dx / length, dy / length];
  const side = (s: 1 | -1): GroundPoint => [x - 2.4 * ux - s * 0.95 * uy, y - 2.4 * uy + s * 0.95 * ux];
  return { kind: 'path', path: closedPath([[x, y], side(1), side(-1)]), width: 0, fill: 'black' };
};

/** Between the lines of a hatch, millimetres. */
const hatchSpacing = 2.2;

/**
 * Slanting lines through a circle, as one path, no longer than what of them lies in a box: a hazard may be far larger than
 * the plan.
 */
export const hatchOfCircle = ([x, y]: GroundPoint, radius: number, box: Box, spacing = hatchSpacing): string => {
  const d = Math.SQRT1_2;
  const lines: string[] = [];
  // how far across the lines the box's corners lie
  const corners = [box.x, box.x + box.width].flatMap((cx) =>
    [box.y, box.y + box.height].map((cy) => (cx - x + cy - y) * d),
  );
  const first = Math.max(-Math.floor(radius / spacing), Math.floor(Math.min(...corners) / spacing));
  const last = Math.min(radius, Math.max(...corners));
  for (let k = first; k * spacing < last; k++) {
    const off = k * spacing;
    const half = Math.sqrt(Math.max(radius * radius - off * off, 0));
    // a place along a line is [x + (off + along) d, y + (off - along) d]
    const [middleX, middleY] = [x + off * d, y + off * d];
    const from = Math.max(-half, (box.x - middleX) / d, (middleY - box.y - box.height) / d);
    const to = Math.min(half, (box.x + box.width - middleX) / d, (middleY - box.y) / d);
    if (from >= to) continue;
    const at = (along: number): GroundPoint => [middleX + along * d, middleY - along * d];
    lines.push(`M${text(at(from))}L${text(at(to))}`);
  }
  return lines.join('');
};
