import { projectToGround } from '../../../core/geometry/shadow.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { edgesOfAll } from '../ui/edges-of-all.ts';
import type { GroundShadow } from '../ui/ground-shadows.ts';
import { hatchStrokes } from '../ui/hatch.ts';

/** The ray from a lamp that ends a subject's shadow. */
export interface ShadowRay {
  /** What the ray passes: the point that throws the tip; the highest point where the shadow is endless. */
  readonly over: Vec3;
  /** The tip on the ground; where the shadow is endless, some way on along the ray. */
  readonly end: Vec3;
  readonly isEndless: boolean;
}

/** How far on an endless ray is drawn, metres. */
const onwardMetres = 6;

/** The ray of a lamp over a subject to its shadow's tip, in world axes. */
export const shadowRay = ({ points, topMetres }: StageSubject, lamp: Vec3): ShadowRay => {
  const isEndless = lamp[1] <= Math.max(topMetres, 0);
  let over: Vec3 = lamp;
  let end: Vec3 = lamp;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i += 3) {
    const point: Vec3 = [points[i] as number, Math.max(points[i + 1] as number, 0), points[i + 2] as number];
    const tip = isEndless ? null : projectToGround(lamp, point);
    const reach = tip ? Math.hypot(tip[0] - lamp[0], tip[2] - lamp[2]) : point[1];
    if (reach <= most) continue;
    most = reach;
    over = point;
    end = tip ?? point;
  }
  if (isEndless && distance(lamp, over) > 1e-6) end = add(over, scale(normalize(sub(over, lamp)), onwardMetres));
  return { over, end, isEndless };
};

/** Over the ground, so that the lines are not lost in it. */
const liftMetres = 0.012;
const onGround = ([east, north]: readonly [number, number]): Vec3 => [east, liftMetres, -north];

/** Ends, two by two, of the lines that hatch a shadow on the ground, along the way from lamp to aim. World axes. */
export const hatchEnds = ({ outlines }: GroundShadow, lamp: Vec3, aim: Vec3, spacingMetres: number): Vec3[] => {
  const along = Math.atan2(lamp[2] - aim[2], aim[0] - lamp[0]);
  return hatchStrokes(outlines, along, spacingMetres).flatMap(([from, to]) => [onGround(from), onGround(to)]);
};

/** Ends, two by two, of the lines round a shadow on the ground. World axes. */
export const edgeEnds = ({ outlines }: GroundShadow): Vec3[] =>
  edgesOfAll(outlines).flatMap(([from, to]) => [onGround(from), onGround(to)]);
