import type { WebGLRenderer } from 'three';
import { describe, expect, it } from 'vitest';
import { keptSamples, LayerStore, type Shot, type StoredLayer } from '../../../app/web/render/layer-store.ts';
import type { Tile } from '../../../app/web/render/scene.ts';
import { SceneLayers } from '../../../app/web/render/scene-layers.ts';
import { SkyPictures } from '../../../app/web/render/sky-pictures.ts';
import { buildWorld, type WorldFrame } from '../../../core/world/world.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

const card = { getContext: () => ({ getExtension: () => null }) } as unknown as WebGLRenderer;
const size = { width: 1000, height: 600 };
const texelBytes = 16;

const setup = onePassSetup({
  camera: { position: [0, 0, 1.5], aim: [0, 6, 1.5] },
  pass: { waypoints: [{ position: [-3, 3, 2], aim: [0, 6, 0] }] },
});
const world = buildWorld({ ...setup, bounces: 1 }, setup.schemes[0] as (typeof setup.schemes)[number]);
const frame = world.frames[0] as WorldFrame;
const source = { kind: 'sky' } as const;

const shotOf = (store: LayerStore, key: string): Shot => store.shot(key, world.view, size, size, true);
/** Layers with a target each, as after some samples. */
const layerOf = (store: LayerStore, key: string, shot: Shot, samples: number): StoredLayer =>
  Object.assign(store.layer(key, source, 1, shot), { full: store.makeFloat(shot.size), samples });

describe('first hits that are kept', () => {
  it.each([1, 2, 3, 5, 8])('of %d shots together fit 96 MB, eight samples a shot at most', (shots) => {
    const kept = keptSamples(size, shots);
    expect(kept).toBeLessThanOrEqual(8);
    expect(shots * kept * size.width * size.height * texelBytes).toBeLessThanOrEqual(96e6);
  });

  it('are one sample a shot where not even that fits', () => {
    expect(keptSamples({ width: 4000, height: 3000 }, 3)).toBe(1);
  });

  it('make room when more shots are wanted, and only those that have to', () => {
    const store = new LayerStore(card);
    const [a, b] = [shotOf(store, 'a'), shotOf(store, 'b')];
    const [first, second] = [layerOf(store, 'first', a, 8), layerOf(store, 'second', b, 0)];
    let disposed = 0;
    for (let i = 0; i < keptSamples(size, 1); i++) {
      const target = store.makeRecord(size);
      target.addEventListener('dispose', () => disposed++);
      a.keptHits.push(target);
    }
    store.trim(new Set([first]), new Set());
    expect(disposed).toBe(0);
    store.trim(new Set([first, second]), new Set());
    expect(a.keptHits).toHaveLength(keptSamples(size, 2));
    expect(disposed).toBe(keptSamples(size, 1) - keptSamples(size, 2));
    expect(disposed).toBeGreaterThan(0);
  });
});

describe('bounced light of a lamp that moves', () => {
  const shown = { frame, weight: 1, mask: null, featherShare: 0 };
  const tile = { name: 'tile', world, frames: [shown] } as unknown as Tile;
  const keyOf = (light: number) => `tile/${frame.id}/${light}/${frame.lights[light]?.id}`;
  /** Textures of bounced light in the picture when the lamp's bounced layer is this one. */
  const shownWith = (layers: SceneLayers, store: LayerStore, shot: Shot, bounced: StoredLayer) => {
    const stored = new Map([[`${keyOf(0)}/1`, bounced]]);
    frame.lights.forEach((_, i) => {
      stored.set(`${keyOf(i)}/0`, layerOf(store, `direct ${i}`, shot, 1));
    });
    layers.set(stored, 64);
    return layers.frameMix(tile, shown).layers.length - frame.lights.length;
  };

  it('is left out at first, then shown on until that of the new place has four samples', () => {
    const [layers, store] = [new SceneLayers(new SkyPictures(() => undefined)), new LayerStore(card)];
    const shot = shotOf(store, 'a');
    const [old, moved] = [layerOf(store, 'old', shot, 3), layerOf(store, 'moved', shot, 0)];
    expect(shownWith(layers, store, shot, old)).toBe(0);
    old.samples = 4;
    expect(shownWith(layers, store, shot, old)).toBe(1);
    expect([...layers.shownOn([`${keyOf(0)}/1`])]).toEqual([old]);
    expect(shownWith(layers, store, shot, moved)).toBe(1);
    expect([...layers.shownOn([`${keyOf(0)}/1`])]).toEqual([old]);
    moved.samples = 4;
    expect(shownWith(layers, store, shot, moved)).toBe(1);
    expect([...layers.shownOn([`${keyOf(0)}/1`])]).toEqual([moved]);
  });

  it('counts as gathered with each sample, as the direct light does, and not with samples of others', () => {
    const [layers, store] = [new SceneLayers(new SkyPictures(() => undefined)), new LayerStore(card)];
    const shot = shotOf(store, 'a');
    const [bounced, other] = [layerOf(store, 'bounced', shot, 0), layerOf(store, 'other', shot, 1)];
    const direct = frame.lights.map((_, i) => layerOf(store, `direct ${i}`, shot, 0));
    const stored = direct.map((layer, i) => [`${keyOf(i)}/0`, layer] as const);
    layers.set(new Map([...stored, [`${keyOf(0)}/1`, bounced], ['other', other]]), 64);
    const seen = [layers.gatheredOf(tile)];
    for (const layer of [...direct, bounced]) {
      layer.samples++;
      seen.push(layers.gatheredOf(tile));
    }
    expect(new Set(seen).size).toBe(direct.length + 2);
    other.samples++;
    expect(layers.gatheredOf(tile)).toBe(seen.at(-1));
  });

  it('is not shown on for another camera', () => {
    const [layers, store] = [new SceneLayers(new SkyPictures(() => undefined)), new LayerStore(card)];
    const [shot, other] = [shotOf(store, 'a'), shotOf(store, 'b')];
    expect(shownWith(layers, store, shot, layerOf(store, 'old', shot, 4))).toBe(1);
    expect(shownWith(layers, store, other, layerOf(store, 'new', other, 0))).toBe(0);
  });

  it('stays in memory while it is shown on, however much is spare', () => {
    const store = new LayerStore(card);
    const shot = { ...shotOf(store, 'a'), size: { width: 4000, height: 4000 } };
    const [old, moved] = [layerOf(store, 'old', shot, 4), layerOf(store, 'moved', shot, 0)];
    store.trim(new Set([moved]), new Set([old]));
    expect(store.layers.has('old')).toBe(true);
    store.trim(new Set([moved]), new Set());
    expect(store.layers.has('old')).toBe(false);
  });
});
