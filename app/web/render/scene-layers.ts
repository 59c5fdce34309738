import type { Texture } from 'three';
import { holderWeight, layerWeight, timeWithHolders } from '../../../core/trace/layer-weights.ts';
import type { Mask } from '../../../core/trace/mask.ts';
import type { WorldFrame } from '../../../core/world/world.ts';
import type { WeightedLayer } from './frame-sum.ts';
import type { StoredLayer } from './layer-store.ts';
import type { FrameMix } from './mixer.ts';
import { picturesOf, type Scene, type Shown, type ShownFrame, type Tile } from './scene.ts';
import type { SkyPictures } from './sky-pictures.ts';
import type { SkyOrder } from './sky-slots.ts';
import type { WantedLayer } from './wanted-layers.ts';

const openSky: Mask = { kind: 'mask', part: 'sky' };

/** By place and id among the frame's lights: ids alone do not do, a pass may be called "sky". */
const storeKey = (shown: Shown, frame: WorldFrame, light: number, bounces: number): string =>
  `${shown.name}/${frame.id}/${light}/${frame.lights[light]?.id}/${bounces}`;

/** A mask lies over the picture of its frame: through the open lens each frame has its own. */
const maskKey = (shown: Shown, { frame, mask }: ShownFrame): string => `${shown.name}/${frame.id}/mask/${mask?.part}`;

/** Samples of bounced light under which it is only noise and is left out of the picture. */
const fewestBounced = 4;

/** The layers that a scene is made of, by key; direct light first. */
export const layersOfScene = (scene: Scene): Map<string, WantedLayer> => {
  const direct = new Map<string, WantedLayer>();
  const bounced = new Map<string, WantedLayer>();
  for (const shown of scene.tiles.flatMap(picturesOf))
    for (const each of shown.frames) {
      const { frame, mask } = each;
      if (mask)
        direct.set(maskKey(shown, each), { label: `mask ${mask.part}`, view: frame.view, source: mask, bounces: 0 });
      frame.lights.forEach(({ id, source }, i) => {
        if (source.kind === 'seen-sky') {
          // the sky itself is drawn apart; traced is where it is open
          direct.set(storeKey(shown, frame, i, 0), {
            label: 'open sky',
            view: frame.view,
            source: openSky,
            bounces: 0,
          });
          return;
        }
        const { bounces } = shown.world;
        const label = source.kind === 'lamp' ? `${shown.name}/${id}` : id;
        const layer = { label, view: frame.view, source, bounces: 0 } as const;
        direct.set(storeKey(shown, frame, i, 0), layer);
        if (bounces > 0)
          bounced.set(storeKey(shown, frame, i, bounces), { ...layer, label: `${label} bounced`, bounces });
      });
    }
  return new Map([...direct, ...bounced]);
};

/** A frame has one sky at most, wherever it stands among its lights. */
const skySlot = (shown: Shown, frame: WorldFrame): string => `${shown.name}/${frame.id}`;

/** The skies that a scene shows. */
export const skiesOfScene = (scene: Scene): SkyOrder[] =>
  scene.tiles
    .flatMap(picturesOf)
    .flatMap((shown) =>
      shown.frames.flatMap(({ frame }) =>
        frame.lights.flatMap(({ source }) =>
          source.kind === 'seen-sky'
            ? [{ slot: skySlot(shown, frame), view: frame.view, sky: source.sky, size: scene.size }]
            : [],
        ),
      ),
    );

/** Which traced layer stands for which light of the scene on screen. */
export class SceneLayers {
  private readonly skies: SkyPictures;
  private stored = new Map<string, StoredLayer>();
  /** Bounced light last shown for a light: it stays until that of a moved lamp has samples enough. */
  private readonly lastBounced = new Map<string, StoredLayer>();
  private fewestShown = fewestBounced;

  constructor(skies: SkyPictures) {
    this.skies = skies;
  }

  /** Bounced light that may have to be shown on with these lights, and must not be disposed of. */
  shownOn(keys: Iterable<string>): Set<StoredLayer> {
    return new Set([...keys].flatMap((key) => this.lastBounced.get(key) ?? []));
  }

  /**
   * Takes up the layers of a new scene.
   *
   * @param maxSamples after which layers are not refined further
   */
  set(stored: Map<string, StoredLayer>, maxSamples: number): void {
    this.stored = stored;
    this.fewestShown = Math.min(fewestBounced, maxSamples);
    // seen by another camera, at another size or on another stage it would lie in the wrong place
    for (const [key, { shot }] of this.lastBounced) if (stored.get(key)?.shot !== shot) this.lastBounced.delete(key);
  }

  clear(): void {
    this.stored = new Map();
    this.lastBounced.clear();
  }

  private bouncedTexture(key: string): Texture | undefined {
    const layer = this.stored.get(key);
    if (layer && layer.samples >= this.fewestShown) this.lastBounced.set(key, layer);
    return this.lastBounced.get(key)?.full?.texture;
  }

  /** What is traced so far of a layer. */
  private textureOf(key: string): Texture | undefined {
    const stored = this.stored.get(key);
    return (stored?.full ?? stored?.coarse)?.texture;
  }

  /** Whether all direct light of a tile has been traced, and its masks, if only coarsely. */
  isReady(tile: Tile): boolean {
    return picturesOf(tile).every((shown) =>
      shown.frames.every((each) => {
        const { frame, mask } = each;
        const keys = frame.lights.map((_, i) => storeKey(shown, frame, i, 0));
        const hasSkies = frame.lights.every(
          ({ source }) => source.kind !== 'seen-sky' || this.skies.of(skySlot(shown, frame)),
        );
        return hasSkies && [...keys, ...(mask ? [maskKey(shown, each)] : [])].every((key) => this.textureOf(key));
      }),
    );
  }

  /** Samples in all layers of a tile together, a coarse picture for half a one: when it grows, the tile looks another. */
  gatheredOf(tile: Tile): number {
    let sum = 0;
    for (const shown of picturesOf(tile))
      for (const each of shown.frames) {
        const { frame, mask } = each;
        const part = mask ? this.stored.get(maskKey(shown, each)) : undefined;
        sum += (part?.samples ?? 0) + (part?.coarse ? 0.5 : 0) + this.skies.numberOf(skySlot(shown, frame));
        for (const i of frame.lights.keys()) {
          const direct = this.stored.get(storeKey(shown, frame, i, 0));
          const { bounces } = shown.world;
          const bounced = bounces > 0 ? this.stored.get(storeKey(shown, frame, i, bounces)) : undefined;
          sum += (direct?.samples ?? 0) + (direct?.coarse ? 0.5 : 0) + (bounced?.samples ?? 0);
        }
      }
    return sum;
  }

  /** A frame as the mixer takes it, of what has been traced so far. */
  frameMix(shown: Shown, each: ShownFrame): FrameMix {
    const { frame, weight, mask, featherShare } = each;
    const { bounces } = shown.world;
    const direct = frame.lights.map((light, i): WeightedLayer => {
      const key = storeKey(shown, frame, i, 0);
      const traced = this.textureOf(key) as Texture;
      const isSky = light.source.kind === 'seen-sky';
      return {
        texture: isSky ? (this.skies.of(skySlot(shown, frame)) as Texture) : traced,
        openShare: isSky ? traced : null,
        weight: layerWeight(frame, light),
        holderWeight: holderWeight(frame, light),
        behind: timeWithHolders(frame, light),
      };
    });
    // after all direct light, which `behind` counts by place
    const bounced = direct.flatMap((layer, i): WeightedLayer[] => {
      const texture = bounces > 0 ? this.bouncedTexture(storeKey(shown, frame, i, bounces)) : undefined;
      return texture ? [{ ...layer, texture, openShare: null, holderWeight: null }] : [];
    });
    const layers = [...direct, ...bounced];
    const key = maskKey(shown, each);
    const samples = this.stored.get(key)?.samples ?? 0;
    const part = mask ? { texture: this.textureOf(key) as Texture, samples, featherShare } : null;
    return { layers, development: frame.development, view: frame.view, weight, mask: part };
  }
}
