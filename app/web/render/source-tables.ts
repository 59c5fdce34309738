import { DataTexture, FloatType, NearestFilter, type PixelFormat, RedFormat, RGBAFormat } from 'three';
import type { MeasuredBeam } from '../../../core/photometry/beam.ts';
import type { Distribution } from '../../../core/photometry/distribution.ts';
import { domeSteps } from '../../../core/sky/dome-cells.ts';
import type { DomeLight } from '../../../core/sky/dome-light.ts';

const floatTable = (data: Float32Array, width: number, height: number, format: PixelFormat): DataTexture => {
  const texture = new DataTexture(data as Float32Array<ArrayBuffer>, width, height, format, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
};

/** Row 0 holds the vertical angles, column 0 the horizontal ones, the rest candela per lumen. */
const beamTable = ({ distribution, perLumen }: MeasuredBeam): DataTexture => {
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
  return floatTable(data, columns + 1, rows + 1, RedFormat);
};

/** Directions of equal light, and in the fourth number the luminance of the dome's cells. */
const domeTable = ({ directions, luminance }: DomeLight): DataTexture => {
  const data = new Float32Array(4 * domeSteps * domeSteps);
  luminance.forEach((value, i) => {
    data.set(directions.subarray(3 * i, 3 * i + 3), 4 * i);
    data[4 * i + 3] = value;
  });
  return floatTable(data, domeSteps, domeSteps, RGBAFormat);
};

/** More than a setup has; those of setups closed long ago go first. */
const mostTables = 16;

/** Textures by what they are of; the one not used for longest goes when there are too many. */
class RecentTextures<Of> {
  private readonly textures = new Map<Of, DataTexture>();

  of(key: Of, make: () => DataTexture): DataTexture {
    const texture = this.textures.get(key) ?? make();
    // put it last: a map keeps the order of insertion
    this.textures.delete(key);
    this.textures.set(key, texture);
    const [oldest] = this.textures.keys();
    if (oldest && this.textures.size > mostTables) {
      this.textures.get(oldest)?.dispose();
      this.textures.delete(oldest);
    }
    return texture;
  }

  dispose(): void {
    for (const texture of this.textures.values()) texture.dispose();
    this.textures.clear();
  }
}

/** Measured beams and skies as the shaders read them, made when first asked for. */
export class SourceTables {
  private readonly beams = new RecentTextures<Distribution>();
  private readonly domes = new RecentTextures<DomeLight>();

  ofBeam(beam: MeasuredBeam): DataTexture {
    return this.beams.of(beam.distribution, () => beamTable(beam));
  }

  ofDome(dome: DomeLight): DataTexture {
    return this.domes.of(dome, () => domeTable(dome));
  }

  dispose(): void {
    this.beams.dispose();
    this.domes.dispose();
  }
}
