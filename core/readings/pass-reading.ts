import { angleBetween, sub, type Vec3 } from '../geometry/vec.ts';
import type { Frame, Lamp, Pass } from '../setup/schema/setup.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { clockText } from '../units/clock.ts';
import { exactSeconds } from '../units/third-stops.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { type BeamReading, beamReading } from './beam-reading.ts';
import { type ColourReading, colourReading } from './colour-reading.ts';
import { type CountReading, countReading } from './count-reading.ts';
import { lampDirection } from './direction.ts';
import { faceLight } from './face-light.ts';
import { type LensReading, lensReading } from './lens-reading.ts';
import { middleMoment } from './moments.ts';
import { type PaintReading, paintReading } from './paint-reading.ts';
import { groundRaking, type Raking, raking } from './relief-reading.ts';
import { type RimReading, rimReading } from './rim-reading.ts';
import { type ShadowReading, shadowReading } from './shadow-reading.ts';
import { type Silhouette, silhouetteOf } from './silhouette.ts';
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
  readonly count: CountReading;
  readonly beam: BeamReading;
  readonly colour: ColourReading;
  /** null when none of the light lands on what the camera sees of the subject. */
  readonly paint: PaintReading | null;
}

/** A pass with all that belongs to it. */
export interface PassToRead {
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly frame: Frame;
  readonly worldFrame: WorldFrame;
  readonly light: WorldLight;
  /** Level that lit targets should have, from mid-grey. */
  readonly wantedStops: number;
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
  private readonly silhouettes = new Map<number, Silhouette>();

  constructor(world: World) {
    this.world = world;
  }

  private silhouette(subject: number): Silhouette {
    const known = this.silhouettes.get(subject) ?? silhouetteOf(this.world.stage, this.world.view, subject);
    this.silhouettes.set(subject, known);
    return known;
  }

  read({ pass, lamp, frame, worldFrame, light, wantedStops }: PassToRead): PassReading {
    const { stage, view } = this.world;
    const moment = middleMoment(light);
    const { position, aim } = moment;
    const direction = lampDirection(aim, view.position, position);
    const surface = targetSurface(stage, view.position, aim);
    const target = surface ? targetReading(stage, surface, light, worldFrame) : null;
    const subject = subjectAt(this.world, aim, surface?.subject ?? -1);
    const silhouette = this.silhouette(subject);
    const face = faceLight(stage, silhouette.face, light.source);
    return {
      passId: pass.id,
      lampId: pass.lampId,
      offAxisDegrees: degreesFromRadians(direction.offAxisRadians),
      clock: clockText(direction.clockHours),
      elevationDegrees: degreesFromRadians(direction.elevationRadians),
      distanceMetres: direction.distanceMetres,
      target,
      shadows: stage.subjects.map((each) => shadowReading(stage, view, each, position)),
      rim: { subjectId: stage.subjects[subject]?.id ?? null, ...rimReading(stage, silhouette, light.source, face) },
      lens: lensReading(this.world, light),
      relief: {
        ...groundRaking(aim, position),
        target: surface ? raking(surface.position, surface.normal, position) : null,
      },
      count: countReading({
        stage,
        light,
        surface,
        target,
        moment,
        levelPercent: pass.levelPercent,
        lowestLevelPercent: lamp.lowestLevelPercent,
        staysLit: pass.held === 'stand' && pass.off - pass.on >= frame.seconds,
        frameSeconds: exactSeconds(frame.seconds),
        iso: worldFrame.exposure.iso,
        wantedStops,
      }),
      beam: beamReading(light, direction.distanceMetres),
      colour: colourReading(lamp, pass),
      paint: paintReading(face, light, worldFrame.exposure, wantedStops),
    };
  }
}
