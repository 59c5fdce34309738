import { decodeSrgb, luminanceOfLinearSrgb } from '../colour/srgb.ts';

/** One channel, or the luminance, over the spot. */
export interface ChannelLevel {
  /** Mean of linear light, 0 to 1 of display white. */
  readonly linear: number;
  /** How far that mean is known: from pixel to pixel, from part to part, and by steps of eight bits; stops. */
  readonly doubtStops: number;
}

/** A spot of a photo. */
export interface SpotLevel {
  readonly red: ChannelLevel;
  readonly green: ChannelLevel;
  readonly blue: ChannelLevel;
  readonly luminance: ChannelLevel;
  /** Share of its pixels that are full in each channel, 0 to 1. */
  readonly full: { readonly red: number; readonly green: number; readonly blue: number };
  readonly pixels: number;
}

/** Pixels of a picture, four bytes each (sRGB and alpha), rows from the top. */
export interface PixelPatch {
  readonly data: Uint8ClampedArray | Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** From this code on a channel counts as full: JPEG ripples by a few codes round white. Our choice. */
const fullCode = 251;

/** Linear light of a code; IEC 61966-2-1. */
const linearOfCode = Float64Array.from({ length: 256 }, (_, code) => decodeSrgb(code / 255));

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
const deviation = (values: readonly number[]): number => {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, v) => sum + (v - middle) ** 2, 0) / Math.max(values.length - 1, 1));
};

/** Half a step of eight bits about a linear value. */
const halfStep = (linear: number): number => {
  const code = linearOfCode.findLastIndex((value) => value < linear) + 1;
  const at = Math.min(Math.max(code, 1), 255);
  return ((linearOfCode[at] as number) - (linearOfCode[at - 1] as number)) / 2;
};

/** Noise of the mean, twice; how the quarters differ; half a step, shrunk where noise dithers it: added as squares. */
const doubtOf = (values: readonly number[], quarters: readonly (readonly number[])[], linear: number): number => {
  const ofPixels = (2 * deviation(values)) / Math.sqrt(values.length);
  const ofParts = deviation(quarters.filter(({ length }) => length > 0).map(mean)) / 2;
  const share = Math.hypot(ofPixels, ofParts, halfStep(linear)) / Math.max(linear, 1e-6);
  return Math.min(Math.log2(1 + share), 20);
};

const levelOf = (values: readonly number[], quarter: readonly number[]): ChannelLevel => {
  const linear = mean(values);
  const quarters = [0, 1, 2, 3].map((q) => values.filter((_, i) => quarter[i] === q));
  return { linear, doubtStops: doubtOf(values, quarters, linear) };
};

/**
 * Mean light over the disc within a patch of a photo: sRGB is undone pixel by pixel (IEC 61966-2-1:1999) before the mean is
 * taken, so that noise does not darken it. A camera's tone curve is not undone here (`photo-look.ts`).
 *
 * @param patch at least one pixel each way
 */
export const spotLevel = ({ data, width, height }: PixelPatch): SpotLevel => {
  const [red, green, blue, luminance, quarter]: [number[], number[], number[], number[], number[]] = [
    [],
    [],
    [],
    [],
    [],
  ];
  const full = { red: 0, green: 0, blue: 0 };
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [across, down] = [(x + 0.5) / width - 0.5, (y + 0.5) / height - 0.5];
      if (Math.hypot(across, down) > 0.5) continue;
      const at = 4 * (y * width + x);
      const codes = [data[at], data[at + 1], data[at + 2]] as [number, number, number];
      const linear = codes.map((code) => linearOfCode[code] as number) as [number, number, number];
      red.push(linear[0]);
      green.push(linear[1]);
      blue.push(linear[2]);
      luminance.push(luminanceOfLinearSrgb(linear));
      quarter.push((across < 0 ? 0 : 1) + (down < 0 ? 0 : 2));
      (['red', 'green', 'blue'] as const).forEach((channel, c) => {
        if ((codes[c] as number) >= fullCode) full[channel]++;
      });
    }
  const pixels = green.length;
  const level = (values: number[]) => levelOf(values, quarter);
  return {
    red: level(red),
    green: level(green),
    blue: level(blue),
    luminance: level(luminance),
    full: { red: full.red / pixels, green: full.green / pixels, blue: full.blue / pixels },
    pixels,
  };
};
