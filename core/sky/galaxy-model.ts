import { planckLinearSrgb } from '../colour/adaptation.ts';
import type { Triple } from '../colour/matrix.ts';

/** Kiloparsecs from us to the middle, and our height over the plane. */
const sunFromCentreKpc = 8.2;
const sunAbovePlaneKpc = 0.02;

/** Light of stars, suns a cubic parsec at our place (discs) or at the middle (bulge); lengths in kiloparsecs. */
const thinDisc = { density: 0.036, length: 3, height: 0.3, hole: 3 } as const;
const thickDisc = { density: 0.06 * 0.036, length: 3.6, height: 0.9 } as const;
const bulge = { density: 0.45, length: 0.55, flattening: 0.6 } as const;
/** Dust: magnitudes in V a kiloparsec at our place; even within 3 kpc of the middle. */
const dust = { magnitudes: 0.75, length: 3.5, height: 0.11, evenWithin: 3 } as const;

/** S10 of a column of 1 sun a square parsec; the sun's V outside is 4.81. */
const s10PerColumn = 3.63;
const magnitudesToDepth = 0.4 * Math.LN10;

/** Colour of each kind of stars before dust, luminance 1: our choice by mean B - V of about 0.75, 0.9 and 1.2. */
const thinColour = planckLinearSrgb(5300);
const thickColour = planckLinearSrgb(4900);
const bulgeColour = planckLinearSrgb(4200);
/** Dust in red and blue over that in V (R 610 nm, B 465 nm; standard law of R_V = 3.1, from memory). */
const redOverV = 0.86;
const blueOverV = 1.25;

/** How much dust there is in the three sums of `starlightAlong`, over the model's own. */
export const dustAmounts = [0.4, 1, 2.5] as const;

/** Light of stars along one line of sight. */
export interface StarlightColumn {
  /** S10 with each of `dustAmounts`. */
  readonly s10: Triple;
  /** Linear sRGB of luminance near 1 with the model's own dust. */
  readonly colour: Triple;
}

const farthestKpc = 22;
const steps = 48;
const edges = Float64Array.from({ length: steps + 1 }, (_, i) => farthestKpc * (i / steps) ** 2.5);

/**
 * Light of all stars along a line of sight through a smooth galaxy of two discs, a bulge and a layer of dust: emission
 * summed outward, dimmed by the dust before it. Steps are short near us and long far out; sums are good to 1 %.
 *
 * @param longitudeRadians galactic longitude, 0 = toward the middle
 * @param latitudeRadians galactic latitude
 * Parameters: our fit (sky.md 4.3) to 24 suns a square parsec at our place (Flynn et al. 2006) and about 430 S10 in
 * Baade's window (from memory).
 */
export const starlightAlong = (longitudeRadians: number, latitudeRadians: number): StarlightColumn => {
  const cosB = Math.cos(latitudeRadians);
  const towardCentre = cosB * Math.cos(longitudeRadians);
  const across = cosB * Math.sin(longitudeRadians);
  const up = Math.sin(latitudeRadians);
  let depth = 0;
  let [thin, lessDust, moreDust, r, g, b] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < steps; i++) {
    const from = edges[i] as number;
    const length = (edges[i + 1] as number) - from;
    const s = from + length / 2;
    const x = sunFromCentreKpc - s * towardCentre;
    const y = s * across;
    const z = sunAbovePlaneKpc + s * up;
    const height = Math.abs(z);
    const radius = Math.sqrt(x * x + y * y);
    const outward = radius - sunFromCentreKpc;
    const discLight =
      thinDisc.density *
      Math.exp(-outward / thinDisc.length - height / thinDisc.height) *
      (1 - Math.exp(-((radius / thinDisc.hole) ** 2)));
    const thickLight = thickDisc.density * Math.exp(-outward / thickDisc.length - height / thickDisc.height);
    const bulgeLight = bulge.density * Math.exp(-Math.sqrt(x * x + y * y + (z / bulge.flattening) ** 2) / bulge.length);
    const dustHere =
      dust.magnitudes *
      Math.exp(-(Math.max(radius, dust.evenWithin) - sunFromCentreKpc) / dust.length - height / dust.height);
    const ownDepth = magnitudesToDepth * dustHere * length;
    const half = depth + ownDepth / 2;
    depth += ownDepth;
    const light = s10PerColumn * 1000 * length;
    const all = light * (discLight + thickLight + bulgeLight);
    const through = Math.exp(-half);
    lessDust += all * Math.exp(-dustAmounts[0] * half);
    thin += all * through;
    moreDust += all * Math.exp(-dustAmounts[2] * half);
    const red = light * Math.exp(-redOverV * half);
    const blue = light * Math.exp(-blueOverV * half);
    r += red * (discLight * thinColour[0] + thickLight * thickColour[0] + bulgeLight * bulgeColour[0]);
    g += light * through * (discLight * thinColour[1] + thickLight * thickColour[1] + bulgeLight * bulgeColour[1]);
    b += blue * (discLight * thinColour[2] + thickLight * thickColour[2] + bulgeLight * bulgeColour[2]);
  }
  return { s10: [lessDust, thin, moreDust], colour: [r / thin, g / thin, b / thin] };
};
