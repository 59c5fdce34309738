import { lamp as lampSchema } from '../../../core/setup/schema/lamp.ts';
import { measuredBeam as measuredSchema } from '../../../core/setup/schema/measured-beam.ts';
import type { Lamp, MeasuredBeam } from '../../../core/setup/schema/setup.ts';

/** A lamp with the schema's defaults filled in. */
export const lampOf = (fields: object): Lamp =>
  lampSchema.parse({ id: 'lamp', name: 'Lamp', output: { from: 'lumens', lumens: 1 }, ...fields });

/** A measured beam named "file", by a formula over its angles in degrees. */
export const measuredField = (
  verticalDegrees: readonly number[],
  horizontalDegrees: readonly number[],
  value: (vertical: number, horizontal: number) => number,
): MeasuredBeam =>
  measuredSchema.parse({
    id: 'file',
    name: 'File',
    verticalDegrees,
    horizontalDegrees,
    candela: horizontalDegrees.map((h) => verticalDegrees.map((v) => value(v, h))),
  });
