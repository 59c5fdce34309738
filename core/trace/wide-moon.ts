import { viewDirection } from '../camera/camera-view.ts';
import { add, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { type MoonFace, moonAxes, moonFace } from '../sky/moon-face.ts';
import type { SkyState } from '../sky/sky-state.ts';
import { faceAlong } from './face-along.ts';
import { throughToMoon } from './moon-way.ts';
import { placeOnPicture } from './on-picture.ts';
import type { SkyWay } from './sky-points.ts';
import type { Canvas } from './splat.ts';

/** A pixel of a disc narrower than so many is looked at in several places each way. */
const finePixels = 100;

/** A straight piece of the moon's way, its disc seen in radii from where the middle is as the piece begins. */
interface Piece {
  readonly from: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** How far the middle goes, radii. */
  readonly goes: readonly [number, number];
}

const pieceOf = (a: SkyState, b: SkyState, { chord }: MoonFace): Piece => {
  const [from, to] = [a.moon.towardSeen, b.moon.towardSeen];
  const way = sub(to, from);
  // square to the middle of the way
  const { right, up } = moonAxes({ ...a, moon: { ...a.moon, towardSeen: normalize(add(from, to)) } });
  return { from, right, up, goes: [dot(way, right) / chord, dot(way, up) / chord] };
};

/** The pixels that a piece may reach: left, top, right, bottom; null where it passes by. */
const boxOf = (way: SkyWay, ends: readonly Vec3[], radiusPixels: number): readonly number[] | null => {
  const { width, height } = way.frame;
  const places = ends.map((end) => placeOnPicture(way.frame, end));
  const [a, b] = places;
  if (!a || !b) return null;
  // off the axis the picture of a disc is drawn out
  const margin = radiusPixels / Math.min(a.cosine, b.cosine) ** 2 + 3 * way.sigma + 2;
  const box = [
    Math.max(Math.floor(Math.min(a.x, b.x) - margin), 0),
    Math.max(Math.floor(Math.min(a.y, b.y) - margin), 0),
    Math.min(Math.ceil(Math.max(a.x, b.x) + margin), width),
    Math.min(Math.ceil(Math.max(a.y, b.y) + margin), height),
  ] as const;
  return box[0] < box[2] && box[1] < box[3] ? box : null;
};

/**
 * Adds a moon that is wide beside a point, pixel by pixel: the mean of its face over the time that the disc passes the
 * pixel, through the air at the pixel's height. Its edge is as soft as a point is wide.
 */
export const addWideMoon = ({ width, height, values }: Canvas, way: SkyWay): void => {
  const [first] = way.states as [SkyState];
  const face = moonFace(first);
  const through = throughToMoon(first.input);
  const { view } = way.frame;
  const radiusPixels = (face.chord * width) / (2 * view.tanHalfWidth);
  const times = Math.max(1, Math.ceil(finePixels / (2 * radiusPixels)));
  const count = Math.max(way.states.length - 1, 1);
  const share = 1 / (count * times * times);
  for (let i = 0; i < count; i++) {
    const [a, b] = [way.states[i] as SkyState, (way.states[i + 1] ?? way.states[i]) as SkyState];
    const piece = pieceOf(a, b, face);
    const box = boxOf(way, [a.moon.towardSeen, b.moon.towardSeen], radiusPixels);
    if (!box) continue;
    const meanAt = faceAlong(face, piece.goes, way.sigma / radiusPixels, radiusPixels);
    const [left, top, right, bottom] = box as [number, number, number, number];
    for (let y = top; y < bottom; y++)
      for (let x = left; x < right; x++)
        for (let k = 0; k < times * times; k++) {
          const [across, down] = [((k % times) + 0.5) / times, (Math.floor(k / times) + 0.5) / times];
          const toward = viewDirection(view, (x + across) / width, (y + down) / height);
          const off = scale(sub(toward, piece.from), 1 / face.chord);
          const luminance = meanAt(dot(off, piece.right), dot(off, piece.up));
          if (luminance <= 0) continue;
          const light = through(toward[1]);
          const at = 3 * (y * width + x);
          for (const c of [0, 1, 2] as const)
            values[at + c] = (values[at + c] as number) + share * luminance * light[c];
        }
  }
};
