import type { Triple } from '../colour/matrix.ts';
import { add, basisAround, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { moonDisc } from '../sky/moon-disc.ts';
import type { SkyState } from '../sky/sky-state.ts';
import { addPoint, type SkyWay } from './sky-points.ts';
import type { Canvas } from './splat.ts';

/** Points across the disc for each pixel that it measures, and at least and at most. */
const perPixel = 1.5;
const [fewest, most] = [32, 240];

const golden = Math.PI * (3 - Math.sqrt(5));

/** Places spread evenly over a disc of radius 1. */
const placesOnDisc = (count: number): [number, number][] =>
  Array.from({ length: count }, (_, i) => {
    const r = Math.sqrt((i + 0.5) / count);
    return [r * Math.cos(i * golden), r * Math.sin(i * golden)];
  });

/**
 * Adds the moon's disc as many points close together, each with its share of the disc's light, along the moon's way.
 * Their light together is the moon's.
 */
export const addMoon = (canvas: Canvas, way: SkyWay): void => {
  const discs = way.states.map((state) => moonDisc(state));
  const [first] = way.states;
  if (!first || discs.every((disc) => disc === null)) return;
  const { radiusRadians } = first.moon;
  const { view, width } = way.frame;
  const across = Math.min(Math.max((radiusRadians * width * perPixel) / view.tanHalfWidth, fewest), most);
  const places = placesOnDisc(Math.ceil((Math.PI / 4) * across ** 2));
  const steradians = (2 * Math.PI * (1 - Math.cos(radiusRadians))) / places.length;
  const onDisc = ({ moon }: SkyState, [a, b]: readonly [number, number]): Vec3 => {
    const { first: right, second: up } = basisAround(moon.towardSeen);
    const chord = Math.sin(radiusRadians);
    return normalize(add(moon.towardSeen, add(scale(right, a * chord), scale(up, b * chord))));
  };
  for (const place of places) {
    const seen = way.states.map((state) => onDisc(state, place));
    const luminance = discs[0]?.(seen[0] as Vec3) ?? discs.at(-1)?.(seen.at(-1) as Vec3) ?? [0, 0, 0];
    const lux = scale(luminance, steradians) as Triple;
    addPoint(canvas, way, seen, () => lux);
  }
};
