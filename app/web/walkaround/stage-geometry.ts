import { BufferAttribute, BufferGeometry } from 'three';
import type { Stage } from '../../../core/world/stage.ts';
import type { StageFinish } from '../../../core/world/stage-finish.ts';

/** What a finish is shown as, three numbers: its even part, or its sheen where it has none. */
const shownColour = ({ reflectance, sheen }: StageFinish): readonly number[] =>
  Math.max(...reflectance) > 0 ? reflectance : (sheen?.normalReflectance ?? reflectance);

interface Coloured {
  /** Of all finishes, one after the other. */
  readonly shown: readonly number[];
  readonly tints: Float32Array | null;
  readonly colours: Float32Array;
}

/** By the list of finishes of triangles, which a stage keeps from the one before where things only moved. */
const known = new WeakMap<Uint16Array, Coloured>();

const coloursOf = ({ finishes, finishOfTriangle, tints }: Stage): Float32Array => {
  const shown = finishes.flatMap(shownColour);
  const before = known.get(finishOfTriangle);
  if (before?.tints === tints && before.shown.length === shown.length && before.shown.every((v, i) => v === shown[i]))
    return before.colours;
  const colours = new Float32Array(finishOfTriangle.length * 9);
  for (let t = 0; t < finishOfTriangle.length; t++) {
    const finish = (finishOfTriangle[t] as number) * 3;
    for (let c = 0; c < 3; c++) {
      const colour = (shown[finish + c] as number) * (tints ? (tints[t * 3 + c] as number) : 1);
      for (let corner = 0; corner < 9; corner += 3) colours[t * 9 + corner + c] = colour;
    }
  }
  known.set(finishOfTriangle, { shown, tints, colours });
  return colours;
};

/** The stage as three draws it: corners, normals, and reflectance as vertex colour. The caller disposes of it. */
export const stageGeometry = (stage: Stage): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(stage.tree.corners, 3));
  geometry.setAttribute('normal', new BufferAttribute(stage.normals, 3));
  // the numbers may be those of another geometry, the attribute not: with one of them goes its memory on the card
  geometry.setAttribute('color', new BufferAttribute(coloursOf(stage), 3));
  return geometry;
};
