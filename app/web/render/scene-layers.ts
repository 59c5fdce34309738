import type { Texture } from 'three';
import { layerWeight } from '../../../core/trace/picture.ts';
import type { WorldFrame } from '../../../core/world/world.ts';
import type { WantedLayer } from './layer-renderer.ts';
import type { StoredLayer } from './layer-store.ts';
import type { FrameMix, WeightedLayer } from './mixer.ts';
import type { Scene, Tile } from './scene.ts';

/** By place and id among the frame's lights: ids alone do not do, a pass may be called "sky". */
const storeKey = (tile: Tile, frame: WorldFrame, light: number, bounces: number): string =>
  `${tile.name}/${frame.id}/${light}/${frame.lights[light]?.id}/${bounces}`;

/** Samples of bounced light under which it is only noise and is left out of the picture. */
const fewestBounced = 4;

/** The layers that a scene is made of, by key; direct light first. */
export const layersOfScene = (scene: Scene): Map<string, WantedLayer> => {
  const direct = new Map<string, WantedLayer>();
  const bounced = new Map<string, WantedLayer>();
  for (const tile of scene.tiles)
    for (const { frame } of tile.frames)
      frame.lights.forEach(({ id, source }, i) => {
        const { bounces } = tile.world;
        const label = source.kind === 'lamp' ? `${tile.name}/${id}` : id;
        const layer = { label, view: frame.view, source, bounces: 0 } as const;
        direct.set(storeKey(tile, frame, i, 0), layer);
        if (bounces > 0)
          bounced.set(storeKey(tile, frame, i, bounces), { ...layer, label: `${label} bounced`, bounces });
      });
  return new Map([...direct, ...bounced]);
};

/** Which traced layer stands for which light of the scene on screen. */
export class SceneLayers {
  private stored = new Map<string, StoredLayer>();
  /** Bounced light last shown for a light: it stays until that of a moved lamp has samples enough. */
  private readonly lastBounced = new Map<string, StoredLayer>();
  private readonly fewestShown: number;

  /** @param maxSamples after which layers are not refined further */
  constructor(maxSamples: number) {
    this.fewestShown = Math.min(fewestBounced, maxSamples);
  }

  /** Bounced light that may have to be shown on with these lights, and must not be disposed of. */
  shownOn(keys: Iterable<string>): Set<StoredLayer> {
    return new Set([...keys].flatMap((key) => this.lastBounced.get(key) ?? []));
  }

  /** Takes up the layers of a new scene. */
  set(stored: Map<string, StoredLayer>): void {
    this.stored = stored;
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

  /** A frame as the mixer takes it, of what has been traced so far. */
  frameMix(tile: Tile, frame: WorldFrame, weight: number): FrameMix {
    const { bounces } = tile.world;
    const layers = frame.lights.flatMap((light, i): WeightedLayer[] => {
      const stored = this.stored.get(storeKey(tile, frame, i, 0));
      const texture = (stored?.full ?? stored?.coarse)?.texture as Texture;
      const weight = layerWeight(frame, light);
      const farTexture = bounces > 0 ? this.bouncedTexture(storeKey(tile, frame, i, bounces)) : undefined;
      return [{ texture, weight }, ...(farTexture ? [{ texture: farTexture, weight }] : [])];
    });
    return { layers, development: frame.development, view: frame.view, weight };
  }
}
