import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { lamp } from '../../../core/setup/schema/lamp.ts';
import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { meter } from '../../../core/trace/meter.ts';
import { emitterOf, fluxOf } from '../../../core/world/lamp-light.ts';
import { stageWith, standing } from '../../core/support/scenes.ts';

/** A lamp of 1000 lm with the schema's defaults filled in. */
export const thousandLumens = (fields: object): Lamp =>
  lamp.parse({ id: 'lamp', name: 'Lamp', output: { from: 'lumens', lumens: 1000 }, ...fields });

const millimetres = (metres: number) => metres * 1000;

/** Even Lambertian lamps by their sizes in metres. */
export const roundPanel = (radius: number): Emitter =>
  emitterOf(thousandLumens({ kind: 'torch', beam: { shape: 'open' }, diameterMm: millimetres(2 * radius) }));
export const panel = (width: number, height: number): Emitter =>
  emitterOf(thousandLumens({ kind: 'panel', widthMm: millimetres(width), heightMm: millimetres(height) }));
export const lantern = (radius: number): Emitter =>
  emitterOf(thousandLumens({ kind: 'lantern', diameterMm: millimetres(2 * radius) }));
export const tube = (length: number, radius: number): Emitter =>
  emitterOf(thousandLumens({ kind: 'tube', lengthMm: millimetres(length), diameterMm: millimetres(2 * radius) }));
export const barePoint = (): Emitter => emitterOf(thousandLumens({ kind: 'point' }));

/** Where reference elements stand: high over the ground, so that it gets in nobody's way. */
export const element: Vec3 = [0, 10, 0];
export const up: Vec3 = [0, 1, 0];
export const south: Vec3 = [0, 0, 1];
export const north: Vec3 = [0, 0, -1];

/** A normal leaned from straight up toward the east. */
export const leaned = (degrees: number): Vec3 => {
  const w = (degrees * Math.PI) / 180;
  return [Math.sin(w), Math.cos(w), 0];
};

const stage = stageWith();

/** Candela in a direction off a lamp's axis, by one sample, which stands for the whole lamp: 10 m away, high up: its light on a facing meter times the distance squared. */
export const candela = (metered: Lamp, offAxisRadians: number): number => {
  const toLamp: Vec3 = [-Math.sin(offAxisRadians), 0, Math.cos(offAxisRadians)];
  const position: Vec3 = [toLamp[0] * 10, element[1], toLamp[2] * 10];
  const aim: Vec3 = [position[0], element[1], position[2] - 1];
  return fluxOf(metered) * meter(stage, standing(position, aim, emitterOf(metered)), element, toLamp, 1) * 10 ** 2;
};
