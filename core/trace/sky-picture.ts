import { type Ray, viewDirection } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import { add, scale, type Vec3 } from '../geometry/vec.ts';
import { glowLuminance } from '../sky/glow-luminance.ts';
import { inputAfter, midExposure } from '../sky/mid-exposure.ts';
import type { SeenSky } from '../sky/seen-sky.ts';
import { skyAt } from '../sky/sky-at.ts';
import { skyLuminance } from '../sky/sky-luminance.ts';
import type { SkyState } from '../sky/sky-state.ts';
import type { StarCatalogue } from '../sky/star-catalogue.ts';
import type { Air } from '../world/air.ts';
import { addBlurred } from './blurred-points.ts';
import { changingSkies } from './changing-skies.ts';
import { addMoon } from './moon-points.ts';
import type { PictureFrame } from './on-picture.ts';
import { addBackground } from './sky-background.ts';
import { addPlanets, addStars, skiesFor } from './sky-points.ts';
import type { Canvas } from './splat.ts';
import { throughToSky } from './through-air.ts';

/** Width of a sharp point in the picture: its standard deviation in pixels. */
export const sharpSigmaPixels = 0.7;

/** Skies while the shutter is open, evenly apart: its middle alone, or its opening and closing among them. */
const statesOf = ({ input, seconds }: SeenSky, count: number): SkyState[] =>
  count === 1
    ? [skyAt(midExposure(input, seconds))]
    : Array.from({ length: count }, (_, i) => skyAt(inputAfter(input, (seconds * i) / (count - 1))));

/** The mean of several smooth skies. */
const meanOf = (skies: readonly ((toward: Vec3) => Triple)[]): ((toward: Vec3) => Triple) => {
  const [only] = skies;
  if (only && skies.length === 1) return only;
  return (toward) =>
    scale(
      skies.reduce<Triple>((sum, sky) => add(sum, sky(toward)), [0, 0, 0]),
      1 / skies.length,
    );
};

/**
 * The smooth sky and the glow of towns over it, cd/m^2 in linear RGB, in a direction in which it is seen: as in the middle of
 * the exposure, or where it changes meanwhile the mean of a few instants.
 *
 * @param middle the sky at the middle of the exposure
 */
export const seenLuminance = (
  middle: SkyState,
  seen: SeenSky,
  withoutStarsToV8: boolean,
): ((toward: Vec3) => Triple) => {
  const { domes } = seen;
  const sky = meanOf(changingSkies(middle, seen).map((state) => skyLuminance(state, domes, { withoutStarsToV8 })));
  const glows = domes.map((dome) => ({
    at: glowLuminance(dome, middle.input.northRadians),
    factor: dome.luminanceAt10DegreesCdM2,
  }));
  return (toward) => {
    let [r, g, b] = sky(toward);
    for (const { at, factor } of glows) {
      const [gr, gg, gb] = at(toward);
      r += gr * factor;
      g += gg * factor;
      b += gb * factor;
    }
    return [r, g, b];
  };
};

const evaluators = new WeakMap<SeenSky, (toward: Vec3) => Triple>();

/** The smooth sky along one direction, its stars spread evenly: for readings, which know no pixels. Haze is not looked at. */
export const seenAlong = (sky: SeenSky, toward: Vec3): Triple => {
  let at = evaluators.get(sky);
  if (!at) {
    at = seenLuminance(statesOf(sky, 1)[0] as SkyState, sky, false);
    evaluators.set(sky, at);
  }
  return at(toward);
};

/** The same past the haze before it: what haze gives of its own is light of moon and sky, see `airLight`. */
export const seenPastHaze = (sky: SeenSky, ray: Ray): Triple =>
  scale(seenAlong(sky, ray.direction), throughToSky(sky.haze, ray));

/** A point out of focus spreads over the picture of the lens; as wide as an even disc of its size. */
const sigmaOf = ({ view, width }: PictureFrame): number => {
  const blurPixels = ((view.lensRadiusMetres / view.focusMetres) * width) / (2 * view.tanHalfWidth);
  return Math.hypot(sharpSigmaPixels, blurPixels / 2);
};

/** What haze near the ground leaves of a sky; what it gives of its own is light of moon and sky, see `airLight`. */
const dimByHaze = ({ width, height, values }: Canvas, { view }: PictureFrame, haze: Air): void => {
  for (let i = 0; i < width * height; i++) {
    const direction = viewDirection(view, ((i % width) + 0.5) / width, (Math.floor(i / width) + 0.5) / height);
    const through = throughToSky(haze, { origin: view.position, direction });
    for (const c of [0, 1, 2]) values[3 * i + c] = (values[3 * i + c] as number) * through;
  }
};

/**
 * What a camera sees of the sky in one exposure with no land before it: the smooth sky as in `seenLuminance`, stars,
 * planets and the moon with their trails. Both renderers take this picture. Luminance in cd/m^2, linear RGB, three numbers a pixel,
 * rows from the top. A point's values times the solid angle of their pixels add up to its illuminance, whatever the size of
 * the picture: it is as bright against the sky as in a camera whose pixels are as large.
 *
 * @param stars null = not at hand: their light is then spread evenly over their parts of the sky
 */
export const skyPicture = (frame: PictureFrame, sky: SeenSky, stars: StarCatalogue | null): Float32Array => {
  const { width, height } = frame;
  const canvas: Canvas = { width, height, values: new Float32Array(3 * width * height) };
  const [middle] = statesOf(sky, 1) as [SkyState];
  addBackground(canvas, frame, seenLuminance(middle, sky, stars !== null));
  const states = statesOf(sky, skiesFor(sky.seconds));
  addBlurred(canvas, { frame, states, sigma: sigmaOf(frame) }, (onto, way) => {
    if (stars) addStars(onto, way, stars);
    addPlanets(onto, way);
    addMoon(onto, way);
  });
  if (sky.haze) dimByHaze(canvas, frame, sky.haze);
  return canvas.values;
};
