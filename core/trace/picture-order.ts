import type { Scheme } from '../setup/schema/setup.ts';
import type { Stage } from '../world/stage.ts';
import type { World, WorldFrame } from '../world/world.ts';
import type { Mask } from './mask.ts';

/** Widest picture that a processor draws, pixels: it takes seconds for more. */
export const widestOrdered = 480;

/** A frame in a picture, and how it counts there. */
export interface ShownFrame {
  readonly frame: WorldFrame;
  readonly weight: number;
  /** Part of the picture that it counts in; null = everywhere. */
  readonly mask: Mask | null;
  /** Width of the mask's soft edge, as a share of the picture's width. */
  readonly featherShare: number;
}

/** Some frames, blended: one picture. */
export interface ShownFrames {
  readonly frames: readonly ShownFrame[];
  readonly mode: Scheme['blend']['mode'];
  readonly bounces: World['bounces'];
}

/** A picture that is asked for: as the screen shows it, or the linear numbers of it that maps are drawn of. */
export interface OrderedPicture {
  readonly name: string;
  readonly shown: ShownFrames;
  /** What it is held against, for a difference. */
  readonly against: ShownFrames | null;
  readonly isMap: boolean;
  readonly marksFull: boolean;
}

/** Pictures of one stage that are asked for together. */
export interface PictureOrder {
  readonly stage: Stage;
  readonly pictures: readonly OrderedPicture[];
  /** Size that they have in the end, in pixels. */
  readonly size: { readonly width: number; readonly height: number };
  readonly samples: number;
}

/** A picture as far as it is. */
export interface DrawnPicture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Eight-bit sRGB and opacity, four bytes a pixel, rows from the top; null for a map. */
  readonly bytes: Uint8ClampedArray<ArrayBuffer> | null;
  /** For a map: linear RGB in mid-grey ratios, three numbers a pixel, and that of what it is held against. */
  readonly linear: Float32Array | null;
  readonly against: Float32Array | null;
}

/** How far pictures that were asked for are. */
export interface DrawnStep {
  readonly pictures: readonly DrawnPicture[];
  readonly samples: number;
  /** Of all that is to be done, 0 to 1. */
  readonly progress: number;
}
