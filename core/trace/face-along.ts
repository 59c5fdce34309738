import type { MoonFace } from '../sky/moon-face.ts';

/** A disc that goes less far than so many radii for each pixel of its radius is taken as standing. */
const standsPixels = 0.5;
/** Up to so many pixels on its way the face is looked at step by step, else in a table. */
const stepsPixels = 8;

const clamp = (t: number, from: number, to: number): number => Math.min(Math.max(t, from), to);

/** Sum of a face along rows in one direction, kept by place on the row (-1 to 1 from rim to rim) and by row. */
const tableAlong = (
  { luminanceAt }: MoonFace,
  [ex, ey]: readonly [number, number],
  radiusPixels: number,
): ((u: number, v: number) => number) => {
  const rows = Math.round(clamp(2 * radiusPixels, 16, 400));
  const columns = Math.round(clamp(4 * radiusPixels, 32, 1200));
  const table = new Float64Array((rows + 1) * (columns + 1));
  for (let r = 0; r <= rows; r++) {
    // rows lie close together at the rim, where they shorten most
    const v = -Math.cos((Math.PI * r) / rows);
    const half = Math.sqrt(Math.max(1 - v * v, 0));
    let sum = 0;
    for (let c = 0; c < columns; c++) {
      const u = half * ((2 * (c + 0.5)) / columns - 1);
      sum += luminanceAt(u * ex - v * ey, u * ey + v * ex) * (2 / columns);
      table[r * (columns + 1) + c + 1] = sum;
    }
  }
  return (u, v) => {
    const half = Math.sqrt(1 - v * v);
    const row = clamp((Math.acos(-v) / Math.PI) * rows, 0, rows - 1e-9);
    const column = clamp(((u / half + 1) / 2) * columns, 0, columns - 1e-9);
    const [r, c] = [Math.floor(row), Math.floor(column)];
    const [down, along] = [row - r, column - c];
    const at = r * (columns + 1) + c;
    const below = at + columns + 1;
    const upper = (table[at] as number) * (1 - along) + (table[at + 1] as number) * along;
    const lower = (table[below] as number) * (1 - along) + (table[below + 1] as number) * along;
    return half * (upper * (1 - down) + lower * down);
  };
};

/** Places in deviations, and weights, that stand for a normal distribution: even steps to three deviations. */
const acrossEdge: readonly (readonly [at: number, weight: number])[] = (() => {
  const places = Array.from({ length: 13 }, (_, i) => (i - 6) / 2);
  const all = places.reduce((sum, at) => sum + Math.exp((-at * at) / 2), 0);
  return places.map((at) => [at, Math.exp((-at * at) / 2) / all] as const);
})();

/** A face whose edge is soft, with no other light in all. A crescent, brightest at its rim, is the fainter for it there. */
const softFace = (face: MoonFace, softRadii: number): ((x: number, y: number) => number) => {
  const edge = 2.5 * softRadii;
  const soft = (x: number, y: number): number => {
    const inside = clamp((1 - Math.hypot(x, y)) / edge + 0.5, 0, 1);
    return inside > 0 ? inside * face.luminanceAt(x, y) : 0;
  };
  const [rings, turns] = [160, 160];
  let sum = 0;
  for (let i = 0; i < rings; i++) {
    // closer together at the rim
    const t = 1 - (i + 0.5) / rings;
    const [r, step] = [(1 + edge / 2) * (1 - t * t), (2 * t * (1 + edge / 2)) / rings];
    for (let j = 0; j < turns; j++) {
      const turn = (2 * Math.PI * (j + 0.5)) / turns;
      sum += ((r * step * 2 * Math.PI) / turns) * soft(r * Math.cos(turn), r * Math.sin(turn));
    }
  }
  const factor = (Math.PI * face.lux) / face.steradians / sum;
  return (x, y) => factor * soft(x, y);
};

/**
 * Mean luminance that a place sees of the moon's face while the disc goes past it on a straight way.
 *
 * @param goes how far its middle goes, radii along the axes of the face
 * @param softRadii how soft its edge is: deviation of a point's picture, radii
 * @param radiusPixels of the disc, for how fine to look
 * @returns by the place, radii from the middle as the disc starts; cd/m2 without air
 */
export const faceAlong = (
  face: MoonFace,
  goes: readonly [number, number],
  softRadii: number,
  radiusPixels: number,
): ((x: number, y: number) => number) => {
  const length = Math.hypot(...goes);
  const pixels = length * radiusPixels;
  const standing = softFace(face, softRadii);
  if (pixels < standsPixels) return standing;
  if (pixels < stepsPixels) {
    const steps = Math.ceil(pixels);
    return (x, y) => {
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        const share = (i + 0.5) / steps;
        sum += standing(x - share * goes[0], y - share * goes[1]);
      }
      return sum / steps;
    };
  }
  const direction = [goes[0] / length, goes[1] / length] as const;
  const upTo = tableAlong(face, direction, radiusPixels);
  const passing = (u: number, v: number): number => {
    if (Math.abs(v) >= 1) return 0;
    const half = Math.sqrt(1 - v * v);
    if (u < -half || u - length > half) return 0;
    return Math.max(upTo(u, v) - upTo(u - length, v), 0) / length;
  };
  return (x, y) => {
    const u = x * direction[0] + y * direction[1];
    const v = y * direction[0] - x * direction[1];
    if (Math.abs(Math.abs(v) - 1) > 3 * softRadii) return passing(u, v);
    return acrossEdge.reduce((sum, [at, weight]) => sum + weight * passing(u, v + at * softRadii), 0);
  };
};
