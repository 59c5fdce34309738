import type { Vec3 } from '../geometry/vec.ts';

/** Stars, the brightest first. */
export interface StarCatalogue {
  readonly count: number;
  /** Unit directions, J2000 equatorial (x toward the equinox, z toward the pole), three numbers a star. */
  readonly directions: Float64Array;
  /** V, outside the air. */
  readonly magnitudes: Float32Array;
  /** Colour index B-V. */
  readonly colourIndices: Float32Array;
}

/** A star as a catalogue has it. */
export interface CatalogueStar {
  /** J2000, degrees. */
  readonly rightAscensionDegrees: number;
  readonly declinationDegrees: number;
  readonly magnitude: number;
  readonly colourIndex: number;
}

const bytesPerStar = 8;
const steps24 = 2 ** 24;
const radians = Math.PI / 180;

const put24 = (bytes: Uint8Array, at: number, share: number): void => {
  const value = Math.min(Math.max(Math.round(share * steps24), 0), steps24 - 1);
  bytes.set([value & 255, (value >> 8) & 255, value >> 16], at);
};
const get24 = (bytes: Uint8Array, at: number): number =>
  ((bytes[at] as number) | ((bytes[at + 1] as number) << 8) | ((bytes[at + 2] as number) << 16)) / steps24;
const byte = (value: number): number => Math.min(Math.max(Math.round(value), 0), 255);

/**
 * Packs stars, brightest first, eight bytes each: right ascension and declination in 24 bits (0.08" and 0.04"), magnitude
 * in steps of 0.04 from -2, B-V in steps of 0.01 from -0.5. What lies outside is held at the ends.
 */
export const packStars = (stars: readonly CatalogueStar[]): Uint8Array => {
  const bytes = new Uint8Array(stars.length * bytesPerStar);
  [...stars]
    .sort((a, b) => a.magnitude - b.magnitude)
    .forEach(({ rightAscensionDegrees, declinationDegrees, magnitude, colourIndex }, i) => {
      const at = i * bytesPerStar;
      put24(bytes, at, (((rightAscensionDegrees % 360) + 360) % 360) / 360);
      put24(bytes, at + 3, (declinationDegrees + 90) / 180);
      bytes[at + 6] = byte((magnitude + 2) * 25);
      bytes[at + 7] = byte((colourIndex + 0.5) * 100);
    });
  return bytes;
};

const equatorial = (rightAscension: number, declination: number): Vec3 => [
  Math.cos(declination) * Math.cos(rightAscension),
  Math.cos(declination) * Math.sin(rightAscension),
  Math.sin(declination),
];

/** Stars from their packed form. Whatever is left over at the end is dropped. */
export const unpackStars = (bytes: Uint8Array): StarCatalogue => {
  const count = Math.floor(bytes.length / bytesPerStar);
  const directions = new Float64Array(3 * count);
  const magnitudes = new Float32Array(count);
  const colourIndices = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    const at = i * bytesPerStar;
    directions.set(equatorial(get24(bytes, at) * 360 * radians, (get24(bytes, at + 3) * 180 - 90) * radians), 3 * i);
    magnitudes[i] = (bytes[at + 6] as number) / 25 - 2;
    colourIndices[i] = (bytes[at + 7] as number) / 100 - 0.5;
  }
  return { count, directions, magnitudes, colourIndices };
};
