import type { DepthReading } from '../readings/depth-reading.ts';
import { blendParts } from './blend-parts.ts';
import type { FrameCase, SchemeRule } from './caution.ts';

type Focused = FrameCase & { readonly depth: DepthReading };

const far = ({ depth }: Focused): number => depth.farMetres ?? Number.POSITIVE_INFINITY;
const metres = (value: number): string => value.toFixed(value < 10 ? 1 : 0);

/** Focus that would be sharp on both sides of a gap alike: sharpness goes with 1/distance. */
const between = (near: number, beyond: number): number => 2 / (1 / near + 1 / beyond);

/** The depths that frames of a blend have sharp leave a gap in which things stand: they are sharp in none. */
export const focusApart: SchemeRule = (schemeCase) => {
  const parts = blendParts(schemeCase).flatMap(({ depth, ...each }): Focused[] => (depth ? [{ ...each, depth }] : []));
  if (parts.length < 2) return [];
  const nearest = Math.min(...parts.map(({ depth }) => depth.nearestMetres ?? Number.POSITIVE_INFINITY));
  // that of a frame for the land: of one for the sky it is the stars, and between land and stars stands nothing
  const things = parts.map(({ depth }) => depth.farthestMetres).filter((value) => value !== null);
  const farthest = things.length > 0 ? Math.max(...things) : Number.POSITIVE_INFINITY;
  const [first, ...others] = parts.sort((a, b) => a.depth.nearMetres - b.depth.nearMetres) as [Focused, ...Focused[]];
  let reach = first;
  for (const next of others) {
    const [value, limit] = [next.depth.nearMetres, far(reach)];
    if (value > limit && limit < farthest && value > nearest) {
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
