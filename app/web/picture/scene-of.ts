import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import type { Scene, Tile } from '../render/scene.ts';

/** Widest picture that is traced, in pixels; wider screens get it magnified. */
const widestPixels = 1280;

/** Memory that layers and first hits on screen may take, in bytes; more lights than fit make the picture smaller. */
const mostLayerBytes = 640e6;

interface View {
  readonly setup: Setup;
  readonly schemes: readonly Scheme[];
  /** Frame shown, by id; null shows the blend. Schemes without that frame show their blend. */
  readonly frameId: string | null;
  /** Whether full channels are marked. */
  readonly marksFull: boolean;
  /** Canvas in device pixels. */
  readonly width: number;
  readonly height: number;
}

const framesOf = (scheme: Scheme, tile: Pick<Tile, 'world'>, frameId: string | null) => {
  const { frames } = tile.world;
  const only = frames.find(({ id }) => id === frameId);
  if (only) return [{ frame: only, weight: 1 }];
  if (scheme.blend.frames.length === 0) return frames.map((frame) => ({ frame, weight: 1 }));
  return scheme.blend.frames.flatMap(({ frameId: id, weight }) => {
    const frame = frames.find((candidate) => candidate.id === id);
    return frame ? [{ frame, weight }] : [];
  });
};

/** Lays the pictures of one or two schemes side by side on a canvas, each in its sensor's aspect, and says at which size to trace. */
export const sceneOf = ({ setup, schemes, frameId, marksFull, width, height }: View): Scene => {
  const gap = schemes.length > 1 ? 8 : 0;
  // on a phone held upright the pictures stand over each other
  const isStacked = height > width;
  const share = (length: number) => Math.floor((length - gap * (schemes.length - 1)) / schemes.length);
  const [room, tall] = isStacked ? [width, share(height)] : [share(width), height];
  const worlds = schemes.map((scheme) => buildWorld(setup, scheme));
  const tiles = schemes.map((scheme, i): Tile => {
    const world = worlds[i] as Tile['world'];
    // a canvas that is the sensor's shape but for rounding is filled to its edges
    const fits = Math.abs(room / tall / world.aspect - 1) < 0.01;
    const tileWidth = fits ? room : Math.min(room, Math.floor(tall * world.aspect));
    const tileHeight = fits ? tall : Math.min(tall, Math.round(tileWidth / world.aspect));
    return {
      name: scheme.id,
      world,
      frames: framesOf(scheme, { world }, frameId),
      mode: scheme.blend.mode,
      marksFull,
      x: (isStacked ? 0 : i * (room + gap)) + Math.floor((room - tileWidth) / 2),
      // from below: the first stands on top
      y: (isStacked ? (schemes.length - 1 - i) * (tall + gap) : 0) + Math.floor((tall - tileHeight) / 2),
      width: tileWidth,
      height: tileHeight,
    };
  });
  const first = tiles[0] as Tile;
  const frames = tiles.flatMap((tile) => tile.frames.map(({ frame }) => frame));
  const lights = frames.flatMap((frame) => frame.lights).length;
  const layers = setup.bounces > 0 ? 2 * lights : lights;
  // each view keeps at least one sample of first hits; through the open lens each frame has its own
  const views = new Set(frames.map(({ view }) => view)).size;
  const bytes = (layers + views) * first.width * first.height * 16;
  const shrink = Math.min(1, widestPixels / Math.max(first.width, 1), Math.sqrt(mostLayerBytes / Math.max(bytes, 1)));
  const size = {
    width: Math.max(Math.round(first.width * shrink), 1),
    height: Math.max(Math.round(first.height * shrink), 1),
  };
  return { tiles, size };
};
