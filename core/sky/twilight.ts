import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';
import type { Sum } from './altitude-table.ts';
import type { SkyBody } from './sky-state.ts';
import { archColours, pinkColour, readColours, zenithColours } from './twilight-colours.ts';
import { twilightAloneIlluminance, twilightEndsDegrees } from './twilight-illuminance.ts';
import { twilightZenithLuminance } from './twilight-zenith.ts';

const channels = [0, 1, 2] as const;
const clamp01 = (t: number): number => Math.min(Math.max(t, 0), 1);
const smooth = (t: number): number => clamp01(t) ** 2 * (3 - 2 * clamp01(t));
const between = (from: number, to: number, t: number): number => from + (to - from) * clamp01(t);

/** How the sky's light lies at one height of the sun. Degrees. */
interface Shape {
  /** Height over which the arch over the sun falls to 1/e, and how narrow it is along the horizon. */
  readonly archHeight: number;
  readonly archPower: number;
  /** Top of the earth's shadow opposite the sun, and how much darker it is. */
  readonly shadowTop: number;
  readonly shadowDepth: number;
}

/** By eye and by our own march of single scattering (sky.md 4.6), which gives 8.1 to 14.6 mag/arcsec2 five degrees up. */
const shapeOf = (sunDegrees: number): Shape => ({
  archHeight: between(4.6, 9, (sunDegrees + 10) / 10) + 7 * smooth((-11 - sunDegrees) / 5),
  archPower: between(4.5, 1.5, (sunDegrees + 12) / 12) - 2 * smooth((-11 - sunDegrees) / 5),
  shadowTop: Math.max(1.1 * -sunDegrees, 0) + 1.5,
  shadowDepth: 0.5 * smooth((sunDegrees + 9) / 5) * smooth((1 - sunDegrees) / 2),
});

/** The part of the whole dome over its value straight up: brighter low down, darker in the earth's shadow. */
const domeAt = ({ shadowTop, shadowDepth }: Shape, sine: number, degrees: number, cosTurn: number): number => {
  const opposite = ((1 - cosTurn) / 2) ** 2;
  return (1 + 0.5 * (1 - sine) ** 2) * (1 - shadowDepth * opposite * smooth((1.6 * shadowTop - degrees) / shadowTop));
};

/** How much of the dome is pink: the band over the earth's shadow, opposite the sun, in early dusk. By eye. */
const pinkAt = ({ shadowTop, shadowDepth }: Shape, degrees: number, cosTurn: number): number => {
  const above = (degrees - 1.5 * shadowTop - 2) / 5;
  return 1.3 * shadowDepth * ((1 - cosTurn) / 2) ** 2 * Math.exp(-above * above);
};

/** The arch over the sun: 1 at the horizon under which the sun is. */
const archAt = ({ archHeight, archPower }: Shape, degrees: number, cosTurn: number): number =>
  Math.exp(-degrees / archHeight) * ((1 + cosTurn) / 2) ** archPower;

const heights = 40;
const turns = 24;
/** Light of a pattern on level ground, lux for each cd/m2: midpoints. */
const illuminanceOf = (at: (sine: number, degrees: number, cosTurn: number) => number): number => {
  let sum = 0;
  for (let i = 0; i < heights; i++) {
    // closer together at the horizon: height goes as u^1.5
    const u = (i + 0.5) / heights;
    const altitude = (Math.PI / 2) * u ** 1.5;
    const step = (((Math.PI / 2) * 1.5 * Math.sqrt(u)) / heights) * ((2 * Math.PI) / turns);
    const weight = Math.sin(altitude) * Math.cos(altitude) * step;
    for (let j = 0; j < turns; j++)
      sum += weight * at(Math.sin(altitude), degreesFromRadians(altitude), Math.cos((Math.PI * (j + 0.5)) / turns));
  }
  return sum;
};

/**
 * Luminance of twilight alone, cd/m2 in linear sRGB: a dome as bright straight up as `twilightZenithLuminance`, and an
 * arch over the sun just so bright that both together put `twilightAloneIlluminance` on level ground. Null without
 * twilight; a sun above the horizon counts as on it.
 *
 * Brightness straight up and on the ground are published; the arch, the earth's shadow and colours are ours.
 *
 * @returns adds the value in a unit direction of the scene's axes to `sum`
 */
export const twilight = (sun: SkyBody): ((toward: Vec3, sum: Sum) => void) | null => {
  const altitude = Math.min(sun.altitudeRadians, 0);
  const sunDegrees = degreesFromRadians(altitude);
  if (sunDegrees <= twilightEndsDegrees) return null;
  const shape = shapeOf(sunDegrees);
  const zenith = twilightZenithLuminance(altitude);
  const domeLux = zenith * illuminanceOf((sine, degrees, cosTurn) => domeAt(shape, sine, degrees, cosTurn));
  const archLux = Math.max(twilightAloneIlluminance(altitude) - domeLux, 0);
  const arch = archLux / illuminanceOf((_, degrees, cosTurn) => archAt(shape, degrees, cosTurn));
  const level = Math.hypot(sun.toward[0], sun.toward[2]) || 1;
  const [sunX, sunZ] = [sun.toward[0] / level, sun.toward[2] / level];
  const domeColour = zenithColours(sunDegrees);
  const archColour = archColours(sunDegrees, domeColour);
  const colour: Sum = [0, 0, 0];
  return ([x, y, z], sum) => {
    const sine = clamp01(y);
    const degrees = degreesFromRadians(Math.asin(sine));
    const flat = Math.sqrt(x * x + z * z);
    const cosTurn = flat > 1e-9 ? Math.min(Math.max((x * sunX + z * sunZ) / flat, -1), 1) : 0;
    const dome = zenith * domeAt(shape, sine, degrees, cosTurn);
    const glow = arch * archAt(shape, degrees, cosTurn);
    readColours(archColour, degrees / shape.archHeight, colour);
    const pink = pinkAt(shape, degrees, cosTurn);
    for (const c of channels)
      sum[c] += dome * (domeColour[c] + pink * (pinkColour[c] - domeColour[c])) + glow * colour[c];
  };
};
