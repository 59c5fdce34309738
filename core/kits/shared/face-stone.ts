import type { FinishDraft } from '../kit.ts';
import { between } from './between.ts';
import { type LoftDraft, loftExtents, shifted } from './loft-extents.ts';

type Outline = [number, number][];

/** A stone in the face of a wall that looks south. */
export interface FaceStone {
  readonly name?: string;
  /** Middle of its face: [east, up], metres. */
  readonly middle: readonly [number, number];
  readonly widthMetres: number;
  readonly heightMetres: number;
  /** North of the place where the face stands out most. */
  readonly faceNorthMetres: number;
  readonly depthMetres: number;
  /** Width of the broken edges round the face. */
  readonly bevelMetres: number;
  /** How far it may be turned and tilted out of the wall's plane, degrees. */
  readonly skewDegrees: number;
  /** Whether its other end is a face too; it is then as deep as said, skew and all. */
  readonly through?: boolean;
  /** How much of its corners is knocked off at most, as a share of its smaller side. */
  readonly wornShare: number;
  readonly finish: FinishDraft;
}

/** Six corners of a roughly oblong stone: four that are knocked off a little, and one each above and below. */
const unevenOutline = (random: () => number, width: number, height: number, wornShare: number): Outline => {
  const off = () => between(random, 0, wornShare) * Math.min(width, height);
  const corner = (east: number, up: number): [number, number] => [
    east * (width / 2 - off()),
    up * (height / 2 - off()),
  ];
  return [
    corner(-1, -1),
    [between(random, -0.2, 0.2) * width, -height / 2],
    corner(1, -1),
    corner(1, 1),
    [between(random, -0.2, 0.2) * width, height / 2],
    corner(-1, 1),
  ];
};

const shrunk = (outline: Outline, width: number, height: number, byMetres: number): Outline => {
  const by = (size: number) => Math.max(1 - (2 * byMetres) / size, 0.3);
  return outline.map(([east, up]) => [east * by(width), up * by(height)]);
};

/** The stone as a loft of 32 triangles (44 where it goes through), none of whose corners stands south of the face. */
export const faceStone = (stone: FaceStone, random: () => number): LoftDraft => {
  const { widthMetres: width, heightMetres: height, bevelMetres, skewDegrees, through = false } = stone;
  const outline = unevenOutline(random, width, height, stone.wornShare);
  const face = shrunk(outline, width, height, bevelMetres);
  const bevelDepth = Math.min(bevelMetres * between(random, 0.5, 1.1), stone.depthMetres / 3);
  const turns = {
    turnDegrees: between(random, -skewDegrees, skewDegrees),
    tiltDegrees: between(random, -skewDegrees, skewDegrees),
  };
  const made = (depth: number): LoftDraft => ({
    kind: 'loft',
    name: stone.name ?? 'Stone',
    position: [stone.middle[0], stone.faceNorthMetres, stone.middle[1]],
    ...turns,
    sections: [
      { northMetres: 0, outline: face },
      { northMetres: bevelDepth, outline },
      ...(through ? [{ northMetres: depth - bevelDepth, outline }] : []),
      { northMetres: depth, outline: through ? face : outline },
    ],
    creaseDegrees: 20,
    finish: stone.finish,
  });
  const straight = made(stone.depthMetres);
  const { low, high } = loftExtents(straight);
  const over = through ? high[1] - low[1] - stone.depthMetres : 0;
  const fitted = over > 0 ? made(stone.depthMetres - over / Math.cos((turns.tiltDegrees * Math.PI) / 180)) : straight;
  return shifted(fitted, [0, stone.faceNorthMetres - loftExtents(fitted).low[1], 0]);
};
