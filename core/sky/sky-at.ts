import { Body, MakeTime, Observer } from 'astronomy-engine';
import { apply } from '../colour/matrix.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { skyFrames } from './frames.ts';
import { bodyFromWay } from './frames-body.ts';
import { moonBody } from './moon-body.ts';
import { planetsAt } from './planets.ts';
import type { SkyInput } from './sky-input.ts';
import type { SkyState } from './sky-state.ts';
import { wayToBody } from './topocentric.ts';

/**
 * Where the sky, the sun, the moon and the planets stand over a place at an instant, in the scene's axes.
 *
 * Between 2000 and 2050 sun, moon and planets stand within 0.01 degrees of what an independent library says; its makers
 * claim an arc minute for centuries round that. UTC is taken for the turn of the earth, which errs by up to 0.9 s or 14
 * seconds of arc. Heights are over a level horizon at the height of the sea.
 *
 * @param input a finite instant, a latitude of -pi/2 to pi/2; the air of it is passed on untouched
 *
 * Source: the astronomy-engine library; tests/reference/sky holds it against Meeus and almanac tables.
 */
export const skyAt = (input: SkyInput): SkyState => {
  const time = MakeTime(new Date(input.utcMilliseconds));
  const observer = new Observer(
    degreesFromRadians(input.latitudeRadians),
    degreesFromRadians(input.longitudeRadians),
    0,
  );
  const frames = skyFrames(input, time, observer);
  const { worldFromJ2000 } = frames;
  const wayToSun = apply(worldFromJ2000, wayToBody(Body.Sun, time, observer));
  const wayToMoon = apply(worldFromJ2000, wayToBody(Body.Moon, time, observer));
  return {
    input,
    ...frames,
    sun: bodyFromWay(wayToSun, input.northRadians),
    moon: moonBody(wayToMoon, wayToSun, input.northRadians),
    planets: planetsAt(time, observer, worldFromJ2000, input.northRadians),
  };
};
