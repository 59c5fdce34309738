import { radiansFromDegrees } from '../units/angle.ts';
import type { CloudNoise } from './cloud-noise.ts';
import type { SkyPatch } from './dark-clouds.ts';

/** The map: thirds of a degree, to 32 degrees from the galactic plane. */
const perDegree = 3;
const halfHeight = 32;
const width = 360 * perDegree;
const height = 2 * halfHeight * perDegree + 1;

/** Degrees of longitude after which the noise at edges repeats. */
const tileDegrees = 360 / 12;
const bendTileDegrees = 360 / 3;
/** Wide bends move edges by this share of a patch's length. */
const bendShare = 0.1;
/** Edges are torn by this share of its width, wide ones more: by eye. */
const tearShare = 0.2;

/** Beyond this square of distance, in halves of its size, nothing of a patch is left. */
const squareLimit = 3.4;

const drawPatch = (map: Float32Array, patch: SkyPatch, noise: CloudNoise): void => {
  const { longitude, latitude, halfLength, halfWidth, tilt, strength } = patch;
  const reach = 1.9 * halfLength + 1;
  const [cos, sin] = [Math.cos(radiansFromDegrees(tilt)), Math.sin(radiansFromDegrees(tilt))];
  const tear = tearShare * halfWidth ** 1.25;
  const bend = bendShare * halfLength;
  const limit = Math.sqrt(squareLimit);
  const slack = 3 * (tear + bend);
  // along a parallel far from the plane a degree of longitude is less than a degree
  const narrow = Math.cos(radiansFromDegrees(latitude));
  const top = Math.ceil(Math.min(latitude + reach, halfHeight) * perDegree);
  const bottom = Math.floor(Math.max(latitude - reach, -halfHeight) * perDegree);
  const wide = Math.ceil((reach / narrow) * perDegree);
  const middle = Math.round(longitude * perDegree);
  for (let j = bottom; j <= top; j++)
    for (let i = middle - wide; i <= middle + wide; i++) {
      const l = i / perDegree;
      const b = j / perDegree;
      // far off even when torn and bent
      const east = (l - longitude) * narrow;
      const north = b - latitude;
      if (Math.abs(north * cos - east * sin) > limit * halfWidth + slack) continue;
      const dl =
        east + tear * noise(l / tileDegrees, b / tileDegrees) + bend * noise(l / bendTileDegrees, b / bendTileDegrees);
      const db =
        north +
        tear * noise(l / tileDegrees + 0.37, b / tileDegrees + 0.61) +
        bend * noise(l / bendTileDegrees + 0.5, b / bendTileDegrees);
      const u = (dl * cos + db * sin) / halfLength;
      const v = (db * cos - dl * sin) / halfWidth;
      const square = u * u + v * v;
      if (square > squareLimit) continue;
      const k = (j + halfHeight * perDegree) * width + (((i % width) + width) % width);
      map[k] = (map[k] as number) + strength * Math.exp(-(square ** 1.35));
    }
};

/**
 * A map of patches, their edges torn by noise; where patches lie over each other they add up.
 *
 * @returns what lies at galactic degrees, longitude 0 to 360; 0 farther than 32 degrees from the plane
 */
export const patchMap = (patches: readonly SkyPatch[], noise: CloudNoise): ((l: number, b: number) => number) => {
  const map = new Float32Array(width * height);
  for (const patch of patches) drawPatch(map, patch, noise);
  return (l, b) => {
    if (Math.abs(b) >= halfHeight) return 0;
    const x = l * perDegree;
    const y = (b + halfHeight) * perDegree;
    const [x0, y0] = [Math.floor(x), Math.floor(y)];
    const [tx, ty] = [x - x0, y - y0];
    const left = y0 * width + (x0 % width);
    const right = y0 * width + ((x0 + 1) % width);
    const near = (map[left] as number) * (1 - tx) + (map[right] as number) * tx;
    const far = (map[left + width] as number) * (1 - tx) + (map[right + width] as number) * tx;
    return near * (1 - ty) + far * ty;
  };
};
