import { meanColour } from '../../../core/scan/mesh-colours.ts';
import { guessUnitAndUp, type PlacingGuess } from './guess-placing.ts';
import type { ScanKind, ScannedMesh } from './scanned-mesh.ts';

/** What the page is told of a scan that was read. */
export interface ScanSummary {
  readonly kind: ScanKind;
  readonly triangleCount: number;
  readonly vertexCount: number;
  /** Mean colour of its surface in linear light, [red, green, blue]; null = it has no colours. */
  readonly meanColour: readonly [number, number, number] | null;
  /** Sentences without their full stops. */
  readonly leftOut: readonly string[];
  readonly guess: PlacingGuess;
  /** Some of its corners in units and axes of the file, three numbers each, to draw it small. */
  readonly somePoints: Float32Array;
}

const mostPoints = 6000;

/** Corners at even steps through the list. */
const somePointsOf = (positions: Float64Array): Float32Array => {
  const count = positions.length / 3;
  const shown = Math.min(count, mostPoints);
  const points = new Float32Array(shown * 3);
  for (let i = 0; i < shown; i++) {
    const corner = Math.floor((i * count) / shown);
    for (let k = 0; k < 3; k++) points[i * 3 + k] = positions[corner * 3 + k] as number;
  }
  return points;
};

/** Sums up a scan for the page. */
export const summarizeScan = (mesh: ScannedMesh): ScanSummary => ({
  kind: mesh.kind,
  triangleCount: mesh.indices.length / 3,
  vertexCount: mesh.positions.length / 3,
  meanColour: mesh.colours && meanColour({ ...mesh, colours: mesh.colours }),
  leftOut: mesh.leftOut,
  guess: guessUnitAndUp(mesh, mesh.kind),
  somePoints: somePointsOf(mesh.positions),
});
