import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { add, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { cellOf, cellSteradians, cells, directionInCell, domeSteps } from './dome-cells.ts';
import { harmonicsOf } from './dome-harmonics.ts';
import { spreadByLight } from './dome-spread.ts';

/** The sky, or a part of it, as a light: how it is spread over the dome, and what it gives to level ground. */
export interface DomeLight {
  /**
   * Directions to the dome that each stand for the same share of its light, three numbers each, in a square of
   * `domeSteps` by `domeSteps`: where two even numbers point to.
   */
  readonly directions: Float32Array;
  /** Illuminance on a surface that turned to every direction at once, per lux on level ground: for an even dome 2 pi L over pi L, 2. */
  readonly luxAllRound: number;
  /** Luminance per lux on level ground, a number a cell as `cellOf` counts. */
  readonly luminance: Float32Array;
  /** What the dome gives to an open surface by its normal, as `harmonicLux` takes them, per lux on level ground. */
  readonly harmonics: readonly number[];
  /** Where its light comes from on the whole. */
  readonly middle: Vec3;
  /** On level ground in the open, linear RGB, lux. */
  readonly illuminance: Triple;
}

/** Round a place at which the sky is steep, cells are sampled so many times each way: within so many radians. */
const finer: readonly { readonly cosine: number; readonly times: number }[] = [
  { cosine: Math.cos((4 * Math.PI) / 180), times: 8 },
  { cosine: Math.cos((16 * Math.PI) / 180), times: 3 },
];

const timesFor = (cell: number, steepAt: Vec3 | null): number => {
  if (!steepAt) return 1;
  // a cell is up to ten degrees long, so its corners count as well as its middle
  const nearest = Math.max(
    ...[
      [0.5, 0.5],
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
    ].map(([across, up]) => dot(directionInCell(cell, across as number, up as number), steepAt)),
  );
  return finer.find(({ cosine }) => nearest >= cosine)?.times ?? 1;
};

/**
 * Reads a sky as a light. Its colour is taken as one: that of its light on level ground.
 *
 * @param luminanceAt linear RGB in cd/m^2 in a direction over the horizon, scene's axes
 * @param steepAt where it is so steep that cells are sampled many times, as round the moon; null = nowhere
 * @returns null where it is dark
 */
export const domeLight = (luminanceAt: (toward: Vec3) => Triple, steepAt: Vec3 | null): DomeLight | null => {
  const luminance = new Float32Array(cells);
  let illuminance: Triple = [0, 0, 0];
  for (let cell = 0; cell < cells; cell++) {
    const times = timesFor(cell, steepAt);
    const share = 1 / times ** 2;
    for (let k = 0; k < times ** 2; k++) {
      const toward = directionInCell(cell, ((k % times) + 0.5) / times, (Math.floor(k / times) + 0.5) / times);
      const colour = luminanceAt(toward);
      luminance[cell] = (luminance[cell] as number) + share * Math.max(luminanceOfLinearSrgb(colour), 0);
      illuminance = add(illuminance, scale(colour, share * toward[1] * cellSteradians));
    }
  }
  const directions = spreadByLight(luminance);
  if (!directions) return null;
  let [rise, sum]: [number, Vec3] = [0, [0, 0, 0]];
  const count = directions.length / 3;
  for (let i = 0; i < count; i++) {
    const toward: Vec3 = [
      directions[3 * i] as number,
      directions[3 * i + 1] as number,
      directions[3 * i + 2] as number,
    ];
    rise += toward[1] / count;
    sum = add(sum, toward);
  }
  const luxAllRound = 1 / rise;
  const total = luminance.reduce((all, value) => all + value, 0) * cellSteradians;
  return {
    directions,
    luxAllRound,
    luminance: luminance.map((value) => (value * luxAllRound) / total),
    harmonics: harmonicsOf(directions, luxAllRound),
    middle: normalize(sum),
    illuminance,
  };
};

/** Luminance of a dome in a direction, per lux on level ground; 0 under the horizon. Smooth between the middles of cells. */
export const domeLuminance = ({ luminance }: DomeLight, toward: Vec3): number => {
  if (toward[1] <= 0) return 0;
  const { column, row } = cellOf(toward);
  const [left, low] = [Math.floor(column - 0.5), Math.floor(row - 0.5)];
  const [across, up] = [column - 0.5 - left, row - 0.5 - low];
  const at = (c: number, r: number) =>
    luminance[Math.min(Math.max(r, 0), domeSteps - 1) * domeSteps + ((c + domeSteps) % domeSteps)] as number;
  const lower = at(left, low) * (1 - across) + at(left + 1, low) * across;
  const upper = at(left, low + 1) * (1 - across) + at(left + 1, low + 1) * across;
  return lower * (1 - up) + upper * up;
};
