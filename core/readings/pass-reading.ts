import { angleBetween, sub, type Vec3 } from '../geometry/vec.ts';
import type { Pass } from '../setup/schema/setup.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { clockText } from '../units/clock.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { lampDirection } from './direction.ts';
import { type LensReading, lensReading } from './lens-reading.ts';
import { middleMoment } from './moments.ts';
import { groundRaking, type Raking, raking } from './relief-reading.ts';
import { type RimReading, rimReading, silhouetteOf } from './rim-reading.ts';
import { type ShadowReading, shadowReading } from './shadow-reading.ts';
import { type TargetReading, targetReading, targetSurface } from './target-reading.ts';

/** All numbers of one pass. Names are those of `lampfall readings --json`. Angles in degrees, bearings from the scene's north. */
export interface PassReading {
  readonly passId: string;
  readonly lampId: string;
  /** Angle at the aim point between the directions to camera and lamp: 0 = on the camera's axis, 90 = side, 180 = behind. */
  readonly offAxisDegrees: number;
  /** "2:30": camera at six. */
  readonly clock: string;
  readonly elevationDegrees: number;
  readonly distanceMetres: number;
  /** null when the camera sees no surface at the aim point. */
  readonly target: TargetReading | null;
  readonly shadows: readonly ShadowReading[];
  readonly rim: RimReading;
  readonly lens: LensReading;
  /** On level ground under the aim point; `target` on the surface that the camera sees there. */
  readonly relief: Raking & { readonly target: Raking | null };
}

/** The subject that a pass is about: the one seen at the aim point, else the one nearest to it in the picture; -1 if none. */
const subjectAt = (world: World, aim: Vec3, seen: number): number => {
  if (seen >= 0) return seen;
  const { subjects } = world.stage;
  const toAim = sub(aim, world.view.position);
  let [best, nearest] = [-1, Number.POSITIVE_INFINITY];
  subjects.forEach(({ points }, s) => {
    for (let i = 0; i < points.length; i += 3) {
      const point: Vec3 = [points[i] as number, points[i + 1] as number, points[i + 2] as number];
      const apart = angleBetween(toAim, sub(point, world.view.position));
      if (apart < nearest) [best, nearest] = [s, apart];
    }
  });
  return best;
};

/** Outlines do not change with the lamp; a reader keeps them while it reads the passes of one world. */
export class PassReader {
  private readonly world: World;
  private readonly silhouettes = new Map<number, ReturnType<typeof silhouetteOf>>();

  constructor(world: World) {
    this.world = world;
  }

  private silhouette(subject: number): ReturnType<typeof silhouetteOf> {
    const known = this.silhouettes.get(subject) ?? silhouetteOf(this.world.stage, this.world.view, subject);
    this.silhouettes.set(subject, known);
    return known;
  }

  read(pass: Pass, frame: WorldFrame, light: WorldLight): PassReading {
    const { stage, view } = this.world;
    const { position, aim } = middleMoment(light);
    const direction = lampDirection(aim, view.position, position);
    const surface = targetSurface(stage, view.position, aim);
    const subject = subjectAt(this.world, aim, surface?.subject ?? -1);
    return {
      passId: pass.id,
      lampId: pass.lampId,
      offAxisDegrees: degreesFromRadians(direction.offAxisRadians),
      clock: clockText(direction.clockHours),
      elevationDegrees: degreesFromRadians(direction.elevationRadians),
      distanceMetres: direction.distanceMetres,
      target: surface ? targetReading(stage, surface, light, frame.exposure) : null,
      shadows: stage.subjects.map((each) => shadowReading(stage, view, each, position)),
      rim: {
        subjectId: stage.subjects[subject]?.id ?? null,
        ...rimReading(stage, this.silhouette(subject), light.source),
      },
      lens: lensReading(this.world, light),
      relief: {
        ...groundRaking(aim, position),
        target: surface ? raking(surface.position, surface.normal, position) : null,
      },
    };
  }
}
