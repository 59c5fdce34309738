import { BufferAttribute, BufferGeometry } from 'three';
import type { Stage } from '../../../core/world/stage.ts';
import type { StageFinish } from '../../../core/world/stage-finish.ts';

/** The stage as three draws it: corners, normals, and reflectance as vertex colour. The caller disposes of it. */
export const stageGeometry = (stage: Stage): BufferGeometry => {
  const { corners } = stage.tree;
  const colours = new Float32Array(corners.length);
  stage.finishOfTriangle.forEach((finish, t) => {
    const { reflectance, sheen } = stage.finishes[finish] as StageFinish;
    const shown = Math.max(...reflectance) > 0 ? reflectance : (sheen?.normalReflectance ?? reflectance);
    const rgb = shown.map((v, c) => v * (stage.tints?.[t * 3 + c] ?? 1));
    for (let c = 0; c < 3; c++) colours.set(rgb, t * 9 + c * 3);
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(corners, 3));
  geometry.setAttribute('normal', new BufferAttribute(stage.normals, 3));
  geometry.setAttribute('color', new BufferAttribute(colours, 3));
  return geometry;
};
