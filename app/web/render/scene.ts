import type { ShownFrame } from '../../../core/trace/picture-order.ts';
import type { World } from '../../../core/world/world.ts';
import type { Size } from './layer-store.ts';

export type { ShownFrame };

/** Some frames of a world, blended: one picture. */
export interface Shown {
  /** What its layers are called; pictures of one name are one. */
  readonly name: string;
  readonly world: World;
  readonly frames: readonly ShownFrame[];
  readonly mode: 'lighten' | 'add' | 'average';
}

/** A picture on one of the page's screens. */
export interface Tile extends Shown {
  /** Name of the screen it is for. */
  readonly screen: string;
  /** The picture itself, its levels as a map of stops, or by how many stops it is brighter than another. */
  readonly look: 'picture' | 'levels' | 'difference';
  /** What it is held against, for the difference. */
  readonly against: Shown | null;
  /** Whether full channels are marked. */
  readonly marksFull: boolean;
  /** Size of the screen in device pixels. */
  readonly width: number;
  readonly height: number;
}

/** What is to be seen. All tiles share one stage and one picture size. */
export interface Scene {
  readonly tiles: readonly Tile[];
  /** Size at which pictures are traced. */
  readonly size: Size;
  /** Samples a pixel gets before its picture counts as done. */
  readonly samples: number;
  /** Whether each tile is shown as soon as it can be; else all wait for each other, and what was there stays. */
  readonly showsEarly: boolean;
}

/** The pictures that a tile is made of. */
export const picturesOf = (tile: Tile): readonly Shown[] => (tile.against ? [tile, tile.against] : [tile]);
