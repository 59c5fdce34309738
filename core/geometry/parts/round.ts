import { heldToFaces } from '../held-to-faces.ts';
import type { Mesh } from '../mesh.ts';
import { type Stretch, turnedMesh } from './lathe.ts';

/** Stretches of a half sphere between two latitudes in radians, centred at `centreHeight`, stretched upward by `stretch`. */
const arc = (radius: number, stretch: number, centreHeight: number, from: number, to: number, rings: number) => {
  const points = Array.from({ length: rings + 1 }, (_, k) => {
    // to the last digit, so that what follows begins at the same places
    const latitude = k === rings ? to : from + ((to - from) * k) / rings;
    const [c, s] = [Math.max(Math.cos(latitude), 0), Math.sin(latitude)];
    return {
      at: [c < 1e-9 ? 0 : radius * c, centreHeight + radius * stretch * s] as const,
      normal: [c * stretch, s] as const,
    };
  });
  return points.slice(1).map((high, k): Stretch => {
    const low = points[k] as (typeof points)[number];
    return { from: low.at, to: high.at, fromNormal: low.normal, toNormal: high.normal };
  });
};

/** A round mesh widened or narrowed along z. */
const stretchedDeep = ({ positions, normals }: Mesh, share: number): Mesh => {
  if (share === 1) return { positions, normals };
  const [places, out] = [positions.slice(), normals.slice()];
  for (let i = 2; i < places.length; i += 3) {
    places[i] = (positions[i] as number) * share;
    // normals of a stretched surface are stretched the other way
    const [x, y, z] = [normals[i - 2] as number, normals[i - 1] as number, (normals[i] as number) / share];
    const length = Math.hypot(x, y, z);
    out.set([x / length, y / length, z / length], i - 2);
  }
  return { positions: places, normals: out };
};

/** A ball or egg resting on the origin: `radius` across, `halfHeight` from centre to top, `radiusDeep` along z. */
export const sphereMesh = (radius: number, halfHeight: number, sides: number, radiusDeep = radius): Mesh => {
  const rings = Math.ceil(sides / 2);
  const upright = turnedMesh(arc(radius, halfHeight / radius, halfHeight, -Math.PI / 2, Math.PI / 2, rings), sides);
  return heldToFaces(stretchedDeep(upright, radiusDeep / radius));
};

/** A shaft shorter than this between round ends is none, metres. */
const leastShaft = 1e-6;

/** A cylinder with round ends resting on the origin; `height` is the whole, at least twice the radius. */
export const capsuleMesh = (radius: number, height: number, sides: number): Mesh => {
  const rings = Math.ceil(sides / 4);
  const hasShaft = height - 2 * radius > leastShaft;
  const bottom = arc(radius, 1, radius, -Math.PI / 2, 0, rings);
  const top = arc(radius, 1, hasShaft ? height - radius : radius, 0, Math.PI / 2, rings);
  const normal = [1, 0] as const;
  const shaft: Stretch = {
    from: (bottom.at(-1) as Stretch).to,
    to: (top[0] as Stretch).from,
    fromNormal: normal,
    toNormal: normal,
  };
  return turnedMesh([...bottom, ...(hasShaft ? [shaft] : []), ...top], sides);
};
