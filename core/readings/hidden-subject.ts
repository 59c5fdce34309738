import { isInFrame } from '../camera/camera-view.ts';
import { anyHit, closestHit } from '../geometry/cast-ray.ts';
import { distance, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { isInTheWay } from '../walk/body.ts';
import type { World } from '../world/world.ts';
import { reach, type SeenBody } from './seen-body.ts';

/** Points of a subject’s skin that are looked at; share of it, or of a body before it, from which on it counts as hidden. */
const skinPoints = 60;
const hidingShare = 0.2;

const somePoints = (points: Float64Array): Vec3[] => {
  const count = points.length / 3;
  const step = Math.max(Math.floor(count / skinPoints), 1);
  return Array.from({ length: Math.ceil(count / step) }, (_, i) => {
    const at = 3 * i * step;
    return [points[at] as number, points[at + 1] as number, points[at + 2] as number];
  });
};

/** Share of a subject that a body hides, by points of its skin that the lens sees without it. */
const hiddenShareOf = ({ stage, view }: World, feet: Vec3, points: Float64Array): number => {
  const eye = view.position;
  const inPicture = somePoints(points).filter((point) => isInFrame(view, point));
  const hides = (point: Vec3) => isInTheWay(feet, eye, point);
  // rays cost more than looking whether the body is near at all
  if (!inPicture.some(hides)) return 0;
  const seen = inPicture.filter(
    (point) => !anyHit(stage.tree, eye, normalize(sub(point, eye)), distance(point, eye) * reach),
  );
  return seen.filter(hides).length / Math.max(seen.length, 1);
};

/** Share of a body that stands before each subject. */
const beforeShares = (
  { stage, view: { position: eye } }: World,
  cells: readonly Vec3[],
): ReadonlyMap<string, number> => {
  const shares = new Map<string, number>();
  for (const cell of cells) {
    const hit = closestHit(stage.tree, eye, normalize(sub(cell, eye)));
    const id = hit && stage.subjects[stage.subjectOfTriangle[hit.triangle] as number]?.id;
    if (id) shares.set(id, (shares.get(id) ?? 0) + 1 / cells.length);
  }
  return shares;
};

/**
 * The subject that a body hides most of: much of the body stands before it, or much of it lies behind the body; null = none.
 * `hiddenShare` is of its skin, 0 to 1.
 */
export const hiddenSubject = (
  world: World,
  { feet, cells }: SeenBody,
): { readonly id: string; readonly hiddenShare: number } | null => {
  const before = beforeShares(world, cells);
  const found = world.stage.subjects
    .map(({ id, points }) => {
      const hiddenShare = hiddenShareOf(world, feet, points);
      return { id, hiddenShare, share: Math.max(before.get(id) ?? 0, hiddenShare) };
    })
    .sort((one, other) => other.share - one.share)[0];
  return found && found.share >= hidingShare ? found : null;
};
