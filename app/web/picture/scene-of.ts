import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type WorldFrame } from '../../../core/world/world.ts';
import type { Size } from '../render/layer-store.ts';
import type { Scene, Shown, Tile } from '../render/scene.ts';
import { shownFrames } from '../render/shown-frames.ts';
import { targetBytes } from '../render/targets.ts';
import { unlitId } from '../state/compared-schemes.ts';
import { framesShown } from '../state/frames-shown.ts';
import { byDay } from './by-day.ts';
import { targetsOf } from './count-targets.ts';

/** Widest picture that is traced, in pixels; wider screens get it magnified. */
const widestPixels = 1280;

/** Memory that layers and first hits on screen may take, in bytes; more lights than fit make the picture smaller. */
const mostLayerBytes = 640e6;

/** A scheme as it is or without its lamps. */
export interface WantedLight {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly isUnlit: boolean;
  /** Seen by day instead, without lamps, to build and frame by. */
  readonly isByDay?: boolean;
  /** What its light is called; the scheme's id where that says enough. */
  readonly name?: string;
}

/** A picture that a room wants on one of its screens. */
export interface WantedPicture extends WantedLight {
  readonly screen: string;
  readonly look: Tile['look'];
  readonly against: WantedLight | null;
  readonly marksFull: boolean;
  /** Of the screen, in device pixels. */
  readonly size: Size;
  /** A frame of its own, or the blend with null; left out, it shows what all do. */
  readonly frame?: Frame | null;
}

interface SceneOptions {
  /** Frame shown, or the one like it; null shows the blend. Schemes without such a frame show their blend. */
  readonly frame: Frame | null;
  readonly samples: number;
  readonly showsEarly?: boolean;
  /** Widest traced picture. */
  readonly widest?: number;
}

const withoutLamps = (frame: WorldFrame): WorldFrame => ({
  ...frame,
  lights: frame.lights.filter(({ source }) => source.kind !== 'lamp'),
});

const shownOf = (wanted: WantedLight, frame: Frame | null): Shown => {
  const { setup, scheme, isUnlit, name } = wanted;
  const world = buildWorld(setup, scheme);
  const frames = shownFrames(setup, scheme, world, framesShown(scheme, frame));
  if (wanted.isByDay) {
    const [first] = frames;
    const seen = first ? [{ frame: byDay(first.frame), weight: 1, mask: null, featherShare: 0 }] : [];
    return { name: `:day ${scheme.id}`, world, frames: seen, mode: 'add' };
  }
  const seen = isUnlit ? frames.map((each) => ({ ...each, frame: withoutLamps(each.frame) })) : frames;
  return { name: isUnlit ? unlitId : (name ?? scheme.id), world, frames: seen, mode: scheme.blend.mode };
};

/** The size to trace at: that of the largest screen, as far as memory goes. */
const tracedSize = (tiles: readonly Tile[], widest: number): Size => {
  const width = Math.max(1, ...tiles.map((tile) => tile.width));
  const height = Math.max(1, ...tiles.map((tile) => tile.height));
  const bytes = targetsOf(tiles) * targetBytes({ width, height });
  const shrink = Math.min(1, widest / width, Math.sqrt(mostLayerBytes / Math.max(bytes, 1)));
  return { width: Math.max(Math.round(width * shrink), 1), height: Math.max(Math.round(height * shrink), 1) };
};

/** What the darkroom is to show for the pictures that a room wants. */
export const sceneOf = (
  pictures: readonly WantedPicture[],
  { frame, samples, showsEarly = false, widest = widestPixels }: SceneOptions,
): Scene => {
  const tiles = pictures.map(
    (picture): Tile => ({
      ...shownOf(picture, picture.frame === undefined ? frame : picture.frame),
      screen: picture.screen,
      look: picture.look,
      against: picture.against && shownOf(picture.against, frame),
      marksFull: picture.marksFull,
      ...picture.size,
    }),
  );
  return { tiles, size: tracedSize(tiles, widest), samples, showsEarly };
};
