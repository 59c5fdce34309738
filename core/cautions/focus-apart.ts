import { dot, sub, type Vec3 } from '../geometry/vec.ts';
import type { DepthReading } from '../readings/depth-reading.ts';
import type { World } from '../world/world.ts';
import { type BlendPart, blendParts } from './blend-parts.ts';
import type { SchemeRule } from './caution.ts';

type Focused = BlendPart & { readonly depth: DepthReading };

const far = ({ depth }: Focused): number => depth.farMetres ?? Number.POSITIVE_INFINITY;
const metres = (value: number): string => value.toFixed(value < 10 ? 1 : 0);

/** Focus that would be sharp on both sides of a gap alike: sharpness goes with 1/distance. */
const between = (near: number, beyond: number): number => 2 / (1 / near + 1 / beyond);

/** From where to where, along the lens's axis, what a frame counts on stands: anywhere, or where its one subject does. */
const spanOf = ({ stage, view }: World, { onlySubject }: BlendPart): readonly [near: number, far: number] => {
  const points = onlySubject === null ? null : stage.subjects[onlySubject]?.points;
  if (!points) return [0, Number.POSITIVE_INFINITY];
  let [near, far] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i < points.length; i += 3) {
    const corner: Vec3 = [points[i] as number, points[i + 1] as number, points[i + 2] as number];
    const depth = dot(sub(corner, view.position), view.forward);
    [near, far] = [Math.min(near, depth), Math.max(far, depth)];
  }
  return [near, far];
};

/** The depths that frames of a blend have sharp leave a gap in which things stand: they are sharp in none. */
export const focusApart: SchemeRule = (schemeCase) => {
  const parts = blendParts(schemeCase).flatMap(({ depth, ...each }): Focused[] =>
    // what counts over the sky alone has nothing sharp before it
    depth && each.hasLand ? [{ ...each, depth }] : [],
  );
  if (parts.length < 2) return [];
  const nearest = Math.min(...parts.map(({ depth }) => depth.nearestMetres ?? Number.POSITIVE_INFINITY));
  // that of a frame for the land: of one for the sky it is the stars, and between land and stars stands nothing
  const things = parts.map(({ depth }) => depth.farthestMetres).filter((value) => value !== null);
  const farthest = things.length > 0 ? Math.max(...things) : Number.POSITIVE_INFINITY;
  const spans = parts.map((part) => spanOf(schemeCase.world, part));
  const [first, ...others] = parts.sort((a, b) => a.depth.nearMetres - b.depth.nearMetres) as [Focused, ...Focused[]];
  let reach = first;
  for (const next of others) {
    const [value, limit] = [next.depth.nearMetres, far(reach)];
    const standsThere = spans.some(([from, to]) => from < value && to > limit);
    if (value > limit && limit < farthest && value > nearest && standsThere) {
      const { id, name } = next.frame;
      return [
        {
          code: 'focus-apart',
          severity: 'note',
          frameId: id,
          message: `${name}: sharp from ${metres(value)} m on, “${reach.frame.name}” only to ${metres(limit)} m. What stands between is sharp in no frame. Focus one of them nearer to the other, stop down, or add a frame focused at ${metres(between(limit, value))} m.`,
          value,
          limit,
        },
      ];
    }
    if (far(next) > far(reach)) reach = next;
  }
  return [];
};
