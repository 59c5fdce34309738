import type { GroundPoint } from '../../geometry/hull.ts';
import type { FieldCard } from '../field-card.ts';

/** A rectangle of paper, millimetres. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How the ground lies on paper. */
export interface PlanFrame {
  readonly box: Box;
  /** 1 : N; N. */
  readonly scale: number;
  /** Paper place of a ground place, [east, north] in metres. */
  readonly place: (ground: GroundPoint) => GroundPoint;
  /** Paper direction of a ground direction, of the same length in millimetres as the scale makes of it. */
  readonly way: (ground: GroundPoint) => GroundPoint;
}

/** Scales that one reads off a ruler. */
const scales = [
  50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 600, 750, 1000, 1250, 1500, 2000, 2500, 3000, 4000, 5000,
];
/** Kept free at the edges for circles and words, millimetres. */
const edge = { side: 7, top: 8, bottom: 9 };
/** How far from the top the mark may lie, as shares of the height: near the middle. */
const [highest, lowest] = [0.38, 0.62] as const;

const unitFrom = ([e0, n0]: GroundPoint, [e1, n1]: GroundPoint): GroundPoint => {
  const away = Math.hypot(e1 - e0, n1 - n0);
  return away > 1e-6 ? [(e1 - e0) / away, (n1 - n0) / away] : [0, 1];
};

/**
 * Lays the ground out: the mark in the middle across, the camera straight under it, at the largest round scale that
 * holds camera, lamps and their ways.
 */
export const planFrame = ({ mark, camera, rows }: Pick<FieldCard, 'mark' | 'camera' | 'rows'>, box: Box): PlanFrame => {
  const up = unitFrom(camera.place, mark.place);
  const turned = ([e, n]: GroundPoint): GroundPoint => [e * up[1] - n * up[0], -(e * up[0] + n * up[1])];
  const fromMark = ([e, n]: GroundPoint) => turned([e - mark.place[0], n - mark.place[1]]);
  const places = [camera.place, ...rows.flatMap(({ way }) => way)].map(fromMark);
  const across = Math.max(0.5, ...places.map(([x]) => Math.abs(x)));
  const above = Math.max(0.5, ...places.map(([, y]) => -y));
  const below = Math.max(0.5, ...places.map(([, y]) => y));
  const share = Math.min(Math.max(above / (above + below), highest), lowest);
  const height = box.height - edge.top - edge.bottom;
  const mmPerMetre = Math.min(
    (box.width / 2 - edge.side) / across,
    (share * height) / above,
    ((1 - share) * height) / below,
  );
  const needed = 1000 / mmPerMetre;
  const scale = scales.find((each) => each >= needed) ?? Math.ceil(needed / 1000) * 1000;
  const middle: GroundPoint = [box.x + box.width / 2, box.y + edge.top + share * height];
  const way = (ground: GroundPoint): GroundPoint => {
    const [x, y] = turned(ground);
    return [(x * 1000) / scale, (y * 1000) / scale];
  };
  return {
    box,
    scale,
    way,
    place: ([e, n]) => {
      const [x, y] = way([e - mark.place[0], n - mark.place[1]]);
      return [middle[0] + x, middle[1] + y];
    },
  };
};
