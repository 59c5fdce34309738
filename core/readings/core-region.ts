import { isInFrame } from '../camera/camera-view.ts';
import { apply } from '../colour/matrix.ts';
import { closestHit } from '../geometry/cast-ray.ts';
import { add, scale, type Vec3 } from '../geometry/vec.ts';
import { apparentDirection } from '../sky/refraction.ts';
import type { SkyState } from '../sky/sky-state.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import type { World } from '../world/world.ts';

/** Radius round the centre of the Milky Way of what counts as its core: the bulge that is seen as such; our choice. */
const radiusRadians = radiansFromDegrees(10);
const points = 91;
const golden = Math.PI * (3 - Math.sqrt(5));
const far = 1e6;

/** Directions in which the core is seen, its centre first, spread evenly over its disc; scene's axes. */
const directionsOf = ({ worldFromGalactic }: SkyState): Vec3[] =>
  Array.from({ length: points }, (_, i) => {
    const [r, turn] = [radiusRadians * Math.sqrt(i / (points - 1)), i * golden];
    const [c, s] = [Math.cos(r), Math.sin(r)];
    return apparentDirection(apply(worldFromGalactic, [c, s * Math.cos(turn), s * Math.sin(turn)]));
  });

/** The core of the Milky Way in a picture. */
export interface CoreRegion {
  /** The centre lies within the picture's edges, whatever stands before it. */
  readonly isCentreInPicture: boolean;
  /** And nothing does, the horizon included. */
  readonly isCentreSeen: boolean;
  /** Share of the core that lies within the picture's edges, 0 to 1. */
  readonly inPictureShare: number;
  /** Share of that which land hides; null where none of it is in the picture. */
  readonly hiddenShare: number | null;
  /** What hides most of it: index of a subject, -1 the ground and the horizon; null where nothing does. */
  readonly hiddenBy: number | null;
  /** Directions in which it is seen. */
  readonly open: readonly Vec3[];
}

/** Reads how much of the core a picture shows, by rays. */
export const coreRegion = ({ stage, view }: World, state: SkyState): CoreRegion => {
  const within = directionsOf(state).map((toward) => ({
    toward,
    isIn: isInFrame(view, add(view.position, scale(toward, far))),
  }));
  const framed = within
    .filter(({ isIn }) => isIn)
    .map(({ toward }) => {
      const hit = closestHit(stage.tree, view.position, toward);
      const hider = hit ? (stage.subjectOfTriangle[hit.triangle] as number) : toward[1] < 0 ? -1 : null;
      return { toward, hider };
    });
  const counts = new Map<number, number>();
  for (const { hider } of framed) if (hider !== null) counts.set(hider, (counts.get(hider) ?? 0) + 1);
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  const open = framed.flatMap(({ toward, hider }) => (hider === null ? [toward] : []));
  const [centre] = within as [(typeof within)[number]];
  return {
    isCentreInPicture: centre.isIn,
    isCentreSeen: open.includes(centre.toward),
    inPictureShare: framed.length / within.length,
    hiddenShare: framed.length > 0 ? 1 - open.length / framed.length : null,
    hiddenBy: most ? most[0] : null,
    open,
  };
};
