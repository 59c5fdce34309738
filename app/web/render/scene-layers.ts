import type { Texture } from 'three';
import { holderWeight, layerWeight, timeWithHolders } from '../../../core/trace/layer-weights.ts';
import type { WeightedLayer } from './frame-sum.ts';
import type { StoredLayer } from './layer-store.ts';
import { lightKey, maskKey, skySlot } from './layers-of-scene.ts';
import type { FrameMix } from './mixer.ts';
import { picturesOf, type Shown, type ShownFrame, type Tile } from './scene.ts';
import type { SkyPictures } from './sky-pictures.ts';

/** Samples of bounced light under which it is only noise and is left out of the picture. */
const fewestBounced = 4;

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
        const keys = frame.lights.map((_, i) => lightKey(shown, frame, i, 0));
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
          const direct = this.stored.get(lightKey(shown, frame, i, 0));
          const { bounces } = shown.world;
          const bounced = bounces > 0 ? this.stored.get(lightKey(shown, frame, i, bounces)) : undefined;
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
      const key = lightKey(shown, frame, i, 0);
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
      const texture = bounces > 0 ? this.bouncedTexture(lightKey(shown, frame, i, bounces)) : undefined;
      return texture ? [{ ...layer, texture, openShare: null, holderWeight: null }] : [];
    });
    const layers = [...direct, ...bounced];
    const key = maskKey(shown, each);
    const samples = this.stored.get(key)?.samples ?? 0;
    const part = mask ? { texture: this.textureOf(key) as Texture, samples, featherShare } : null;
    return { layers, development: frame.development, view: frame.view, weight, mask: part };
  }
}
