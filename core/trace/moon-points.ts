import { add, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { moonAxes, moonFace } from '../sky/moon-face.ts';
import type { SkyState } from '../sky/sky-state.ts';
import { moonStates, throughToMoon } from './moon-way.ts';
import { addPoint, type SkyWay } from './sky-points.ts';
import type { Canvas } from './splat.ts';
import { addWideMoon } from './wide-moon.ts';

/** Points across the disc, at least; they lie as far apart as a point is wide, so that they run into one. */
const fewest = 12;
/** A disc so many times as wide as a point is shaded pixel by pixel. */
const wideShare = 40;

const golden = Math.PI * (3 - Math.sqrt(5));

/** Places spread evenly over a disc of radius 1. */
const placesOnDisc = (count: number): [number, number][] =>
  Array.from({ length: count }, (_, i) => {
    const r = Math.sqrt((i + 0.5) / count);
    return [r * Math.cos(i * golden), r * Math.sin(i * golden)];
  });

/** As many points close together, each with its share of the disc's light: all together have its light. */
const addPoints = (canvas: Canvas, way: SkyWay, diameterPixels: number): void => {
  const [first] = way.states as [SkyState];
  const face = moonFace(first);
  const through = throughToMoon(first.input);
  const across = Math.max(diameterPixels / way.sigma, fewest);
  const places = placesOnDisc(Math.ceil((Math.PI / 4) * across ** 2));
  const shares = places.map(([x, y]) => face.luminanceAt(x, y));
  const each = face.lux / shares.reduce((sum, share) => sum + share, 0);
  const axes = way.states.map((state) => ({ middle: state.moon.towardSeen, ...moonAxes(state) }));
  for (const [i, [x, y]] of places.entries()) {
    const seen = axes.map(
      ({ middle, right, up }): Vec3 =>
        normalize(add(middle, add(scale(right, x * face.chord), scale(up, y * face.chord)))),
    );
    const lux = each * (shares[i] as number);
    addPoint(canvas, way, seen, (sine) => scale(through(sine), lux));
  }
};

/**
 * Adds the moon's disc along its way: as points where it is small beside their width, else pixel by pixel. What its face
 * gives above the air is taken as the shutter opens, what gets through the air piece by piece.
 */
export const addMoon = (canvas: Canvas, way: SkyWay): void => {
  const [first] = way.states as [SkyState];
  const { view, width } = way.frame;
  const states = moonStates(way.states);
  const diameterPixels = (first.moon.radiusRadians * width) / view.tanHalfWidth;
  if (diameterPixels > wideShare * way.sigma) addWideMoon(canvas, { ...way, states });
  else addPoints(canvas, { ...way, states }, diameterPixels);
};
