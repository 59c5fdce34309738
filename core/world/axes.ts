import type { Vec3 } from '../geometry/vec.ts';
import type { Position } from '../setup/schema/setup.ts';

/** World axes (x east, y up, z south) from the document's [east, north, up]. */
export const worldFromDocument = ([east, north, up]: Position): Vec3 => [east, up, -north];

/** The document's [east, north, up] from world axes. */
export const documentFromWorld = ([x, y, z]: Vec3): Position => [x, -z, y];
