import { describe, expect, it } from 'vitest';
import { smoothMesh } from '../../../../core/geometry/relief/smooth-mesh.ts';

describe('smoothMesh', () => {
  it('gives a corner the mean of its faces by their areas: a roof of one slope twice as large as the other', () => {
    // two squares meet along z in a ridge of right angles; the left one, 1 m wide, is half as large as the right one
    const points = Float64Array.of(0, 0, 0, 0, 0, -1, -1, -1, 0, -1, -1, -1, 2, -2, 0, 2, -2, -1);
    const triangles = Uint32Array.of(0, 1, 2, 1, 3, 2, 0, 4, 1, 4, 5, 1);
    const { normals } = smoothMesh({ points, triangles });
    // at the ridge's near end meet one triangle of the left and one of the right
    const sum = [-1 + 2, 1 + 2, 0];
    const length = Math.hypot(...sum);
    expect([...normals.subarray(0, 3)]).toEqual(sum.map((v) => expect.closeTo(v / length, 12)));
    // a corner of one face alone has its normal
    expect([...normals.subarray(6, 9)]).toEqual([-Math.SQRT1_2, Math.SQRT1_2, 0].map((v) => expect.closeTo(v, 12)));
  });

  it('stays finite where triangles have no area', () => {
    const points = Float64Array.of(0, 0, 0, 1, 0, 0, 2, 0, 0);
    const { normals } = smoothMesh({ points, triangles: Uint32Array.of(0, 1, 2) });
    expect([...normals]).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0]);
  });
});
