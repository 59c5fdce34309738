import type { Triple } from '../colour/matrix.ts';
import { whiteLinearSrgb } from '../colour/white-locus.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { skyAirMass } from './air-mass.ts';
import { airglowColour, airglowRise } from './airglow.ts';
import { altitudeTable, type Sum } from './altitude-table.ts';
import { cloudTransmittance, extendedTransmittance } from './extinction.ts';
import type { GlowDome } from './glow-dome.ts';
import { luminanceOfS10 } from './magnitudes.ts';
import { starlight } from './milky-way.ts';
import { scatteredS10, siteDarkness } from './site-darkness.ts';
import type { SkyState } from './sky-state.ts';
import { zodiacalColour, zodiacalS10 } from './zodiacal.ts';

/** Colour of starlight that the air scatters: bluish, our choice. */
const scatteredColour = whiteLinearSrgb(7500);
/** Colour of the light of unnamed towns: between old and new street lamps, our choice. */
const townColour = whiteLinearSrgb(3200);
/** Light of unnamed towns rises to the horizon as the sky's own layers do, held under 5 degrees. */
const lowestSine = Math.sin((5 * Math.PI) / 180);

/** Of what thin cloud takes out of wide light, half stays close by and does no harm; of the rest most comes down elsewhere. */
const spreadShare = 0.5;
const keptShare = 0.8;
/** Means over the sky of starlight and zodiacal light on the ground, S10 (ours), and of airglow over its zenith. */
const meanBeyondS10 = 180;
const meanAirglowRise = 1.7;

/**
 * Luminance of the moonless night sky but for twilight, stars and named towns, cd/m2 in linear sRGB: airglow, zodiacal
 * light, Milky Way, scattered starlight, light of unnamed towns; thin cloud evens them out.
 *
 * @returns adds the value in a unit direction of the scene's axes to `sum`; below the horizon with the air of the horizon
 */
export const naturalSky = (
  { input, worldFromGalactic: g, worldFromEcliptic: e, sun }: SkyState,
  domes: readonly GlowDome[],
  withoutStarsToV8: boolean,
): ((toward: Vec3, sum: Sum) => void) => {
  const { airglowS10, artificialCdM2 } = siteDarkness(input, domes);
  const k = input.extinctionMagnitudes;
  const stars = starlight(withoutStarsToV8);

  const spreadAt = (sine: number): number => spreadShare * (1 - cloudTransmittance(input, sine));
  const airTable = altitudeTable((sine) => {
    const spread = spreadAt(sine);
    const glow = airglowS10 * airglowRise(k, sine) * luminanceOfS10 * (1 - spread);
    const scattered = scatteredS10 * airglowRise(k, sine) * luminanceOfS10;
    const towns = artificialCdM2 * skyAirMass(Math.max(sine, lowestSine));
    const veil = keptShare * spread * (meanBeyondS10 + meanAirglowRise * airglowS10) * luminanceOfS10;
    const at = (c: 0 | 1 | 2): number =>
      (glow + veil) * airglowColour[c] + scattered * scatteredColour[c] + towns * townColour[c];
    return [at(0), at(1), at(2)];
  });
  const throughTable = altitudeTable((sine) => {
    const [r, gr, b] = extendedTransmittance(input, sine);
    const rest = (1 - spreadAt(sine)) * luminanceOfS10;
    return [r * rest, gr * rest, b * rest];
  });

  const inEcliptic = (x: number, y: number, z: number): Triple => [
    e[0][0] * x + e[1][0] * y + e[2][0] * z,
    e[0][1] * x + e[1][1] * y + e[2][1] * z,
    e[0][2] * x + e[1][2] * y + e[2][2] * z,
  ];
  const [sx, sy] = inEcliptic(...sun.toward);
  const sunFlat = Math.hypot(sx, sy);
  const air: Sum = [0, 0, 0];
  const through: Sum = [0, 0, 0];
  const band: Sum = [0, 0, 0];
  return ([x, y, z], sum) => {
    airTable(y, air);
    throughTable(y, through);
    const gx = g[0][0] * x + g[1][0] * y + g[2][0] * z;
    const gy = g[0][1] * x + g[1][1] * y + g[2][1] * z;
    const gz = g[0][2] * x + g[1][2] * y + g[2][2] * z;
    const l = degreesFromRadians(Math.atan2(gy, gx));
    stars(l < 0 ? l + 360 : l, degreesFromRadians(Math.asin(Math.min(Math.max(gz, -1), 1))), band);
    const [ex, ey, ez] = inEcliptic(x, y, z);
    const flat = Math.sqrt(ex * ex + ey * ey);
    const zodiacal = zodiacalS10(ez, flat > 1e-9 ? (ex * sx + ey * sy) / (flat * sunFlat) : 0);
    sum[0] += air[0] + through[0] * (band[0] + zodiacal * zodiacalColour[0]);
    sum[1] += air[1] + through[1] * (band[1] + zodiacal * zodiacalColour[1]);
    sum[2] += air[2] + through[2] * (band[2] + zodiacal * zodiacalColour[2]);
  };
};
