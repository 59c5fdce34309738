import type { World, WorldFrame } from '../../../core/world/world.ts';
import type { Size } from './layer-store.ts';

/** One picture on the screen: some frames of a world, blended, in a rectangle of device pixels from the lower left. */
export interface Tile {
  readonly name: string;
  readonly world: World;
  readonly frames: readonly { readonly frame: WorldFrame; readonly weight: number }[];
  readonly mode: 'lighten' | 'add' | 'average';
  /** Whether full channels are marked. */
  readonly marksFull: boolean;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What is to be seen. All tiles share one stage and one picture size. */
export interface Scene {
  readonly tiles: readonly Tile[];
  /** Size at which pictures are traced. */
  readonly size: Size;
}
