import type { Accessors } from './accessors.ts';
import type { JsonField } from './json-field.ts';
import { identity, type Matrix, multiply, placePoints } from './matrix.ts';
import type { Primitive } from './primitives.ts';
import type { NodeMatrices } from './scene-nodes.ts';

/** For each joint of a skin, how it moves corners of the mesh into the scene while the model rests. */
export const jointMatrices = (skin: JsonField, nodes: NodeMatrices, accessors: Accessors): Matrix[] => {
  const inverse = skin.get('inverseBindMatrices');
  const rows = inverse.isThere ? accessors.numbers(inverse.whole(), [16]) : null;
  return skin
    .get('joints')
    .items()
    .map((joint, i) => {
      const jointFromMesh = rows && i < rows.count ? Array.from(rows.values.subarray(i * 16, i * 16 + 16)) : identity;
      return multiply(nodes.get(joint.whole()) ?? identity, jointFromMesh);
    });
};

/** Corners of a primitive as its joints hold them (glTF 2.0, section 3.7.3.1): the sum of the joints' places by weight. */
export const skinnedPositions = (primitive: Primitive, joints: readonly Matrix[]): Float64Array => {
  const { positions } = primitive;
  const placed = new Float64Array(positions.length);
  if (!primitive.joints) {
    placePoints(identity, positions, placed, 0);
    return placed;
  }
  const { numbers, weights } = primitive.joints;
  const [point, moved] = [new Float32Array(3), new Float64Array(3)];
  for (let corner = 0; corner < positions.length / 3; corner++) {
    point.set(positions.subarray(corner * 3, corner * 3 + 3));
    let total = 0;
    for (let k = 0; k < 4; k++) total += weights.values[corner * 4 + k] as number;
    for (let k = 0; k < 4; k++) {
      const weight = weights.values[corner * 4 + k] as number;
      if (weight === 0) continue;
      placePoints(joints[numbers.values[corner * numbers.width + k] as number] ?? identity, point, moved, 0);
      for (let axis = 0; axis < 3; axis++)
        placed[corner * 3 + axis] = (placed[corner * 3 + axis] as number) + ((moved[axis] as number) * weight) / total;
    }
  }
  return placed;
};
