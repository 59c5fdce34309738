import type { Vec3 } from '../geometry/vec.ts';
import type { Frame, Lamp, Pass, Walking } from '../setup/schema/setup.ts';
import { meterReceiver } from '../trace/meter.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { clockText } from '../units/clock.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { exactSeconds } from '../units/third-stops.ts';
import type { Stage } from '../world/stage.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { agreementReading } from './agreement-reading.ts';
import type { AmbientWays } from './ambient-ways.ts';
import { beamReading } from './beam-reading.ts';
import { colourReading } from './colour-reading.ts';
import { countReading } from './count-reading.ts';
import { lampDirection } from './direction.ts';
import { evennessReading } from './evenness-reading.ts';
import { moonOf } from './frame-sky.ts';
import { bestDose } from './key-to-fill.ts';
import { lensReading } from './lens-reading.ts';
import { middleMoment } from './moments.ts';
import { paintReading } from './paint-reading.ts';
import type { PassReading } from './pass-reading.ts';
import { passSubject } from './pass-subject.ts';
import { type PatchReading, patchReading } from './patch-reading.ts';
import { personReading } from './person-reading.ts';
import { groundRaking, raking } from './relief-reading.ts';
import { rimReading } from './rim-reading.ts';
import { shadowReading } from './shadow-reading.ts';
import { type Sight, sightOf } from './sight.ts';
import { type TargetReading, targetReading, targetSurface } from './target-reading.ts';

/** A pass with all that belongs to it. */
interface PassToRead {
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly frame: Frame;
  readonly worldFrame: WorldFrame;
  readonly light: WorldLight;
  /** Level that lit targets should have, from mid-grey. */
  readonly wantedStops: number;
}

/** What a pass is read against beside its world. */
export interface Surroundings {
  /** Corners of the drawn patch in order round it, world metres; null without one. */
  readonly patchCorners: readonly Vec3[] | null;
  /** Where moon and glow stand. */
  readonly ways: AmbientWays;
  /** Of whoever holds the lamps. */
  readonly clothes: Walking['clothes'];
}

const nothingAround: Surroundings = {
  patchCorners: null,
  ways: { moonBearingDegrees: null, glowBearingDegrees: null },
  clothes: 'dark',
};

/** A target's dose over that of the moon there, stops. */
const overMoon = (stage: Stage, surface: SurfacePoint, target: TargetReading, frame: WorldFrame): number | null => {
  const moon = moonOf(frame);
  const moonDose = moon ? moon.lux * moon.light.seconds * meterReceiver(stage, moon.light.source, surface) : 0;
  return moonDose > 0 && target.doseLuxSeconds > 0 ? stopsFromRatio(target.doseLuxSeconds / moonDose) : null;
};

/** Reads the passes of one world. */
export class PassReader {
  private readonly world: World;
  private readonly sight: Sight;
  private readonly surroundings: Surroundings;

  constructor(world: World, surroundings = nothingAround) {
    this.world = world;
    this.sight = sightOf(world.stage, world.view);
    this.surroundings = surroundings;
  }

  private readPatch({ source }: WorldLight): PatchReading | null {
    const { patchCorners } = this.surroundings;
    if (!patchCorners) return null;
    const light = this.sight.patchLight(patchCorners, source);
    return patchReading(this.world.stage, this.sight.patch(patchCorners), source, light);
  }

  read({ pass, lamp, frame, worldFrame, light, wantedStops }: PassToRead): PassReading {
    const { stage, view } = this.world;
    const moment = middleMoment(light);
    const { position, aim } = moment;
    const direction = lampDirection(aim, view.position, position);
    const surface = targetSurface(stage, view.position, aim);
    const target = surface ? targetReading(stage, surface, light, worldFrame) : null;
    const subject = passSubject(this.world, aim, surface);
    const silhouette = this.sight.silhouette(subject);
    const face = this.sight.faceLight(subject, light.source);
    const shadows = stage.subjects.map((each) => shadowReading(stage, view, each, position));
    const elevationDegrees = degreesFromRadians(direction.elevationRadians);
    return {
      passId: pass.id,
      lampId: pass.lampId,
      offAxisDegrees: degreesFromRadians(direction.offAxisRadians),
      clock: clockText(direction.clockHours),
      elevationDegrees,
      distanceMetres: direction.distanceMetres,
      lampHeightMetres: position[1],
      target,
      shadows,
      rim: { subjectId: stage.subjects[subject]?.id ?? null, ...rimReading(stage, silhouette, light.source, face) },
      lens: lensReading(this.world, light),
      person: personReading(this.world, { pass, frame, worldFrame, light, clothes: this.surroundings.clothes }),
      relief: {
        ...groundRaking(aim, position),
        target: surface ? raking(surface.position, surface.normal, position) : null,
        patch: this.readPatch(light),
      },
      ...evennessReading(silhouette, face, light.source),
      bestDoseLuxSeconds: bestDose([[light, face]]),
      overMoonStops: surface && target ? overMoon(stage, surface, target, worldFrame) : null,
      agreement: agreementReading(shadows[subject] ?? null, elevationDegrees, this.surroundings.ways),
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
