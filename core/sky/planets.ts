import { type AstroTime, Body, Illumination, type Observer } from 'astronomy-engine';
import { apply, type Matrix3 } from '../colour/matrix.ts';
import { bodyFromWay } from './frames-body.ts';
import type { Planet } from './sky-state.ts';
import { wayToBody } from './topocentric.ts';

/** The planets that the eye sees as bright stars. */
const seenPlanets = [
  { name: 'Mercury', body: Body.Mercury },
  { name: 'Venus', body: Body.Venus },
  { name: 'Mars', body: Body.Mars },
  { name: 'Jupiter', body: Body.Jupiter },
  { name: 'Saturn', body: Body.Saturn },
] as const;

/** The five planets seen by eye: where they stand and how bright they are outside the air. */
export const planetsAt = (
  time: AstroTime,
  observer: Observer,
  worldFromJ2000: Matrix3,
  northRadians: number,
): readonly Planet[] =>
  seenPlanets.map(({ name, body }) => ({
    name,
    ...bodyFromWay(apply(worldFromJ2000, wayToBody(body, time, observer)), northRadians),
    magnitude: Illumination(body, time).mag,
  }));
