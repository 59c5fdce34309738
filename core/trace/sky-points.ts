import { apply, type Matrix3, type Triple } from '../colour/matrix.ts';
import { angleBetween, dot, scale, type Vec3 } from '../geometry/vec.ts';
import { cloudTransmittance } from '../sky/extinction.ts';
import { apparentDirection } from '../sky/refraction.ts';
import type { SkyState } from '../sky/sky-state.ts';
import type { StarCatalogue } from '../sky/star-catalogue.ts';
import { starHalo } from '../sky/star-halo.ts';
import { starLight } from '../sky/star-light.ts';
import { type PictureFrame, pixelSteradians, placeOnPicture } from './on-picture.ts';
import { type Canvas, splat } from './splat.ts';

/** Longest piece of a trail that is drawn straight. */
const pieceRadians = (2 * Math.PI) / 180;
/** What lies this far under the horizon is not seen: sine of the altitude. */
const lowestSine = -0.02;
/** How far out of the picture stars are still looked at, as a share of the half-diagonal's tangent. */
const outerShare = 1.15;

/** Points of the sky on their way over a picture while the shutter is open. */
export interface SkyWay {
  readonly frame: PictureFrame;
  /** Skies from when the shutter opens to when it closes, evenly apart; one for a moment. */
  readonly states: readonly SkyState[];
  /** Width of a point, pixels. */
  readonly sigma: number;
}

/** How many skies a trail needs. */
export const skiesFor = (seconds: number): number =>
  seconds <= 0 ? 1 : 2 + Math.floor((seconds * 7.2921e-5) / pieceRadians);

/**
 * Adds the light of a point to a picture, luminance in cd/m^2, along its way: the sum over pixels times their solid angle is
 * its illuminance.
 *
 * @param seen directions in which it is seen, one a sky
 * @param luxAt illuminance by sine of the altitude
 */
export const addPoint = (
  canvas: Canvas,
  { frame, sigma }: SkyWay,
  seen: readonly Vec3[],
  luxAt: (sinAltitude: number) => Triple,
): void => {
  const pieces = Math.max(seen.length - 1, 1);
  for (let i = 0; i < pieces; i++) {
    const [from, to] = [seen[i] as Vec3, (seen[i + 1] ?? seen[i]) as Vec3];
    const sine = (from[1] + to[1]) / 2;
    if (sine < lowestSine) continue;
    const [a, b] = [placeOnPicture(frame, from), placeOnPicture(frame, to)];
    if (!a || !b) continue;
    const [r, g, bl] = luxAt(sine);
    const per = 1 / (pixelSteradians(frame, (a.cosine + b.cosine) / 2) * pieces);
    splat(canvas, { x0: a.x, y0: a.y, x1: b.x, y1: b.y }, [r * per, g * per, bl * per], sigma);
  }
};

/** Least cosine between the lens's axis and what may fall into the picture on its way. */
const leastCosine = ({ frame: { view }, states }: SkyWay): number => {
  const halfDiagonal = Math.atan(outerShare * Math.hypot(view.tanHalfWidth, view.tanHalfHeight));
  const [first, last] = [states[0] as SkyState, states.at(-1) as SkyState];
  // how far the sky turns meanwhile, by the way of a place on the equator
  const turned = angleBetween(column(first.worldFromJ2000), column(last.worldFromJ2000));
  return Math.cos(Math.min(halfDiagonal + turned + 0.02, Math.PI));
};
const column = (m: Matrix3): Vec3 => [m[0][0], m[1][0], m[2][0]];

/** Fainter ones have no glow in thin cloud that is seen. */
const faintestWithGlow = 6;

/**
 * Adds a point and, where thin cloud is before it, the glow that cloud puts round it.
 *
 * @param light what `starLight` gives for this sky's air
 */
const addStar = (
  canvas: Canvas,
  way: SkyWay,
  seen: readonly Vec3[],
  [magnitude, colourIndex]: readonly [number, number],
  light: ReturnType<typeof starLight>,
): void => {
  addPoint(canvas, way, seen, (sine) => light(magnitude, colourIndex, sine));
  const { input } = way.states[0] as SkyState;
  if (input.thinCloudDepth <= 0 || magnitude > faintestWithGlow) return;
  const { view, width } = way.frame;
  const { spreadRadians } = starHalo(input.thinCloudDepth, 1);
  const sigma = Math.hypot(way.sigma, (spreadRadians * width) / (2 * view.tanHalfWidth));
  addPoint(canvas, { ...way, sigma }, seen, (sine) => {
    const share = starHalo(input.thinCloudDepth, sine).share / Math.max(cloudTransmittance(input, sine), 1e-6);
    return scale(light(magnitude, colourIndex, sine), share);
  });
};

/** Adds all stars of a catalogue. */
export const addStars = (
  canvas: Canvas,
  way: SkyWay,
  { count, directions, magnitudes, colourIndices }: StarCatalogue,
) => {
  const { states, frame } = way;
  const light = starLight((states[0] as SkyState).input);
  const least = leastCosine(way);
  for (let i = 0; i < count; i++) {
    const there: Vec3 = [directions[3 * i] as number, directions[3 * i + 1] as number, directions[3 * i + 2] as number];
    const first = apply((states[0] as SkyState).worldFromJ2000, there);
    if (dot(first, frame.view.forward) < least) continue;
    const seen = states.map(({ worldFromJ2000 }) => apparentDirection(apply(worldFromJ2000, there)));
    addStar(canvas, way, seen, [magnitudes[i] as number, colourIndices[i] as number], light);
  }
};

/** Colour index of the planets' light, that of the sun reflected. */
const planetColourIndex = 0.8;

/** Adds the five planets that the eye sees. */
export const addPlanets = (canvas: Canvas, way: SkyWay): void => {
  const [first] = way.states as [SkyState];
  const light = starLight(first.input);
  for (const [k, { magnitude }] of first.planets.entries()) {
    const seen = way.states.map(({ planets }) => (planets[k] as (typeof planets)[number]).towardSeen);
    addStar(canvas, way, seen, [magnitude, planetColourIndex], light);
  }
};
