import type { Triple } from '../colour/matrix.ts';
import { add, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { facetLobe, mirroredDensity } from '../photometry/facets.ts';
import { spotAreaAcross } from '../photometry/seen-emitter.ts';
import type { Stage } from '../world/stage.ts';
import type { Sheen } from '../world/stage-finish.ts';
import type { Source } from '../world/world.ts';
import type { Arrival, Receiver, SampleNumbers } from './arrival.ts';
import { arrivalOf, arrives, irradianceSample } from './irradiance.ts';
import { evenShare, evenShareAllRound, fresnel, sheenNormal } from './sheen.ts';
import type { SurfacePoint } from './surface-point.ts';

/**
 * How lamps and moon show in a rough sheen:
 * - `none`: not at all, only the even part counts;
 * - `spots`: by the lobe for the spot of the lamp that was drawn. No sheen is brighter than the lamp itself, so that is
 *   the limit, which keeps one spot of a large lamp from standing for all of it in a narrow lobe;
 * - `shared`: the same, while rays drawn from the lobe look for the lamp too. Each counts by its density over both (Veach
 *   and Guibas 1995, balance heuristic), so that neither large lamps nor small ones make bright specks.
 */
export type SheenBy = 'none' | 'spots' | 'shared';

/** Share of light that goes evenly, under a sheen. */
const shareUnder = (sheen: Sheen, cosEye: number, { normal }: Receiver, { isAllRound, toLight }: Arrival): number =>
  isAllRound ? evenShareAllRound(sheen, cosEye) : evenShare(sheen, cosEye, dot(normal, toLight));

/** The lobe for a spot of a lamp as it counts beside what `by` says. `density` is that of rays drawn from the lobe. */
const lobeOfSpot = (
  source: Source,
  { toLight, lamp }: Arrival,
  lobe: number,
  density: number,
  cosLight: number,
  by: SheenBy,
): number => {
  if (!lamp || source.kind !== 'lamp') return lobe;
  const area = spotAreaAcross(source.emitter, lamp.pose, scale(toLight, -1), lamp);
  const distance2 = lamp.distance ** 2;
  if (by === 'shared') return (lobe * distance2) / (distance2 + area * density);
  // the lamp's luminance over the illuminance that its spot stands for
  return area > 0 ? Math.min(lobe, distance2 / (area * cosLight)) : lobe;
};

/** Luminance of a rough sheen by a lamp or the moon. Of the sky, and in mirrors, rays that go on find it. */
const sheenLuminance = (
  source: Source,
  surface: SurfacePoint,
  sheen: Sheen,
  normal: Vec3,
  arrival: Arrival,
  by: SheenBy,
): Triple => {
  const { toEye } = surface;
  const { toLight, lux } = arrival;
  const cosLight = dot(normal, toLight);
  const isWide = source.kind === 'sky' || source.kind === 'dome' || arrival.isAllRound;
  if (by === 'none' || isWide || sheen.alpha === 0 || cosLight <= 0) return [0, 0, 0];
  const lobe = facetLobe(sheen.alpha, normal, toEye, toLight);
  const density = mirroredDensity(sheen.alpha, normal, toEye, toLight);
  const light = lux * lobeOfSpot(source, arrival, lobe, density, cosLight, by);
  const [r, g, b] = fresnel(sheen, Math.min(dot(normalize(add(toEye, toLight)), toEye), 1));
  return [r * light, g * light, b * light];
};

/**
 * Luminance that a surface sends to the eye of one sample of a source's light, per unit strength, linear RGB: what it
 * returns evenly of the light on the side that is looked at, what it lets through of the light on the other side, spread
 * evenly (tau E / pi), and its sheen. The shadow of the light that comes through starts on the far side, so that the walls
 * of a tent let a lantern inside glow and the moon, which would have to pass two of them, not.
 */
export const surfaceLuminance = (
  stage: Stage,
  source: Source,
  surface: SurfacePoint,
  numbers: SampleNumbers,
  by: SheenBy,
): Triple => {
  const { far, finish, reflectance } = surface;
  const { sheen, transmittance } = finish;
  if (!sheen) {
    const [r, g, b] = reflectance;
    const near = irradianceSample(stage, source, surface, numbers) / Math.PI;
    const through = far ? (transmittance * irradianceSample(stage, source, far, numbers)) / Math.PI : 0;
    return [near * r + through, near * g + through, near * b + through];
  }
  const normal = sheenNormal(surface);
  const cosEye = dot(normal, surface.toEye);
  const sum: [number, number, number] = [0, 0, 0];
  const arrival = arrivalOf(stage, source, surface, numbers);
  if (arrives(stage, surface, arrival)) {
    const near = (arrival.lux * shareUnder(sheen, cosEye, surface, arrival)) / Math.PI;
    const shine = sheenLuminance(source, surface, sheen, normal, arrival, by);
    for (const c of [0, 1, 2] as const) sum[c] = near * reflectance[c] + shine[c];
  }
  const behind = far && sheen.through ? arrivalOf(stage, source, far, numbers) : null;
  if (far && behind && arrives(stage, far, behind)) {
    const through = (transmittance * behind.lux * shareUnder(sheen, cosEye, far, behind)) / Math.PI;
    for (const c of [0, 1, 2] as const) sum[c] += through;
  }
  return sum;
};
