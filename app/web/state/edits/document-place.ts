import type { Vec3 } from '../../../../core/geometry/vec.ts';
import type { Position } from '../../../../core/setup/schema/setup.ts';
import { documentFromWorld } from '../../../../core/world/axes.ts';

/** A world place for the document, rounded to a step (metres): short in the file, and no minus nought. */
export const documentPlace = (place: Vec3, stepMetres: number): Position => {
  const times = Math.round(1 / stepMetres);
  const [east, north, up] = documentFromWorld(place);
  const rounded = (v: number) => Math.round(v * times) / times + 0;
  return [rounded(east), rounded(north), rounded(up)];
};
