import { DataTexture, FloatType, NearestFilter, RedFormat } from 'three';
import type { MeasuredBeam } from '../../../core/photometry/beam.ts';
import type { Distribution } from '../../../core/photometry/distribution.ts';

/** Row 0 holds the vertical angles, column 0 the horizontal ones, the rest candela per lumen. */
const tableOf = ({ distribution, perLumen }: MeasuredBeam): DataTexture => {
  const { verticalRadians, horizontalRadians, candela } = distribution;
  const [columns, rows] = [verticalRadians.length, horizontalRadians.length];
  const data = new Float32Array((columns + 1) * (rows + 1));
  data.set(verticalRadians, 1);
  horizontalRadians.forEach((angle, row) => {
    const at = (row + 1) * (columns + 1);
    data[at] = angle;
    data.set(
      candela.subarray(row * columns, (row + 1) * columns).map((value) => value * perLumen),
      at + 1,
    );
  });
  const texture = new DataTexture(data, columns + 1, rows + 1, RedFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
};

/** More than a setup has; beams of setups closed long ago go first. */
const mostTables = 16;

/** Measured beams as the shaders read them, made when first asked for. */
export class MeasuredTables {
  private readonly tables = new Map<Distribution, DataTexture>();

  of(beam: MeasuredBeam): DataTexture {
    const table = this.tables.get(beam.distribution) ?? tableOf(beam);
    // put it last: a map keeps the order of insertion
    this.tables.delete(beam.distribution);
    this.tables.set(beam.distribution, table);
    const [oldest] = this.tables.keys();
    if (oldest && this.tables.size > mostTables) {
      this.tables.get(oldest)?.dispose();
      this.tables.delete(oldest);
    }
    return table;
  }

  dispose(): void {
    for (const table of this.tables.values()) table.dispose();
    this.tables.clear();
  }
}
