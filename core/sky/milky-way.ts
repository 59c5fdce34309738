import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import type { Sum } from './altitude-table.ts';
import { catalogueMeanS10 } from './catalogue-mean.ts';
import { type CloudNoise, cloudNoise } from './cloud-noise.ts';
import { darkClouds, starClouds } from './dark-clouds.ts';
import { galaxyTable, galaxyTableKept } from './galaxy-table.ts';
import { magellanicS10 } from './magellanic-clouds.ts';
import { patchMap } from './patch-map.ts';
import { starColour } from './star-colour.ts';

/** Light that comes from before a dark cloud, over all of it. */
const beforeClouds = 0.25;
/** How lumpy dust is, in the band and within named clouds: spread of its logarithm. By eye. */
const lumps = 0.6;
const lumpsInClouds = 0.4;
/** Degrees from the plane over which lumps fade. */
const lumpsFade = 9;
/** Lumps of the band as a whole do not change its mean by much: the light of lumpy dust is a little more. */
const lumpsMean = 0.12;
/** Degrees after which the two noises repeat: they do not fall together. */
const firstTile = 360 / 7;
const secondTile = 360 / 12;
const depthOfMagnitude = 0.4 * Math.LN10;
/** Dust in red and blue over that in green, as in the galaxy's own model. */
const redOverGreen = 0.86;
const blueOverGreen = 1.25;
/** The clouds of Magellan: younger stars than ours, B - V near 0.55 (from memory). */
const beyondColour = starColour(0.55);
/** Of the band's light at least this share is left when catalogue stars are taken out: they are not spread evenly. */
const leastLeft = 0.3;

interface Maps {
  readonly galaxy: (l: number, b: number, out: Float64Array) => void;
  readonly dark: (l: number, b: number) => number;
  readonly bright: (l: number, b: number) => number;
  readonly noise: CloudNoise;
}

let made: Maps | null = null;

/** Made once, when starlight is first asked for. */
const maps = (): Maps => {
  if (made) return made;
  const noise = cloudNoise(1610);
  made = { galaxy: galaxyTable(), dark: patchMap(darkClouds, noise), bright: patchMap(starClouds, noise), noise };
  return made;
};

/**
 * Light of all stars outside the air, as an evaluator: the smooth galaxy, with lumps in its dust, named dark clouds and
 * star clouds, and the two clouds of Magellan.
 *
 * @param withoutStarsToV8 leaves out the mean light of catalogue stars to V = 8
 * @returns writes S10 in linear sRGB (S10 = its luminance) at galactic degrees, longitude 0 to 360, into `out`
 */
export const starlight = (withoutStarsToV8: boolean): ((l: number, b: number, out: Sum) => void) => {
  const { galaxy, dark, bright, noise } = maps();
  const column = new Float64Array(galaxyTableKept);
  return (l, b, out) => {
    galaxy(l, b, column);
    const [a, slope, bend, red, blue] = column as unknown as [number, number, number, number, number];
    const first = noise(l / firstTile, (b * 1.4) / firstTile);
    const second = noise(l / secondTile + 0.3, (b * 1.3) / secondTile);
    // where a noise passes through 0 it draws threads, as dust has them
    const lump = 0.65 * first + 0.9 * (0.8 - Math.abs(second));
    const dust = lumpsMean + (lumps * lump) / (1 + (b / lumpsFade) ** 2);
    let s10 = Math.exp(a + slope * dust + bend * dust * dust);
    s10 *= 1 + bright(l, b);
    const depth = depthOfMagnitude * dark(l, b) * Math.exp(lumpsInClouds * lump - 0.1);
    let [r, g, bl] = [red, 1, blue];
    if (depth > 1e-4) {
      r *= beforeClouds + (1 - beforeClouds) * Math.exp(-redOverGreen * depth);
      g *= beforeClouds + (1 - beforeClouds) * Math.exp(-depth);
      bl *= beforeClouds + (1 - beforeClouds) * Math.exp(-blueOverGreen * depth);
    }
    const scale = s10 / luminanceOfLinearSrgb([red, 1, blue]);
    const beyond = magellanicS10(l, b);
    const total = scale * luminanceOfLinearSrgb([r, g, bl]) + beyond;
    const less = withoutStarsToV8 ? Math.max(1 - catalogueMeanS10(b) / total, leastLeft) : 1;
    out[0] = less * (scale * r + beyond * beyondColour[0]);
    out[1] = less * (scale * g + beyond * beyondColour[1]);
    out[2] = less * (scale * bl + beyond * beyondColour[2]);
  };
};
