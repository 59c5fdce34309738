import { Body, KM_PER_AU, MakeTime, Observer } from 'astronomy-engine';
import { apply } from '../colour/matrix.ts';
import { length } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { skyFrames } from './frames.ts';
import { altitudeOf, bodyFromWay } from './frames-body.ts';
import { hourAngleOf } from './hour-angle.ts';
import { moonBody, moonRadiusKm } from './moon-body.ts';
import type { SkyInput } from './sky-input.ts';
import type { MoonBody, SkyBody } from './sky-state.ts';
import { wayToBody } from './topocentric.ts';

/** Single bodies of the sky over one place at any instant, for searches that need them often. */
export interface NightProbe {
  readonly sun: (milliseconds: number) => SkyBody;
  readonly moon: (milliseconds: number) => MoonBody;
  /** True height of the moon's upper edge over the horizon, radians: cheaper than the whole moon. */
  readonly moonTopRadians: (milliseconds: number) => number;
  /** The centre of the Milky Way: l = b = 0. */
  readonly core: (milliseconds: number) => SkyBody;
  /** How far the sun is past its highest, as an angle of the earth's turn, -pi to pi. */
  readonly sunHourAngle: (milliseconds: number) => number;
}

/** The probe of a place. Its bearings are true; its directions are in the scene's axes. */
export const nightProbe = (input: SkyInput): NightProbe => {
  const { latitudeRadians, longitudeRadians, northRadians } = input;
  const observer = new Observer(degreesFromRadians(latitudeRadians), degreesFromRadians(longitudeRadians), 0);
  const framesAt = (milliseconds: number) => {
    const time = MakeTime(new Date(milliseconds));
    return { time, ...skyFrames(input, time, observer) };
  };
  const sun: NightProbe['sun'] = (milliseconds) => {
    const { time, worldFromJ2000 } = framesAt(milliseconds);
    return bodyFromWay(apply(worldFromJ2000, wayToBody(Body.Sun, time, observer)), northRadians);
  };
  return {
    sun,
    moon: (milliseconds) => {
      const { time, worldFromJ2000 } = framesAt(milliseconds);
      const way = (body: Body) => apply(worldFromJ2000, wayToBody(body, time, observer));
      return moonBody(way(Body.Moon), way(Body.Sun), northRadians);
    },
    moonTopRadians: (milliseconds) => {
      const { time, worldFromJ2000 } = framesAt(milliseconds);
      const way = apply(worldFromJ2000, wayToBody(Body.Moon, time, observer));
      return altitudeOf(way) + Math.asin(moonRadiusKm / (length(way) * KM_PER_AU));
    },
    core: (milliseconds) => bodyFromWay(apply(framesAt(milliseconds).worldFromGalactic, [1, 0, 0]), northRadians),
    sunHourAngle: (milliseconds) => hourAngleOf(sun(milliseconds), latitudeRadians),
  };
};
