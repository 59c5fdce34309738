import { type AstroTime, type Body, Equator, type Observer } from 'astronomy-engine';
import type { Vec3 } from '../geometry/vec.ts';

/** Way from the place to a body, in astronomical units, J2000 equatorial axes: with parallax, light time and aberration. */
export const wayToBody = (body: Body, time: AstroTime, observer: Observer): Vec3 => {
  const { x, y, z } = Equator(body, time, observer, false, true).vec;
  return [x, y, z];
};
