import { DataTexture, FloatType, RGBAFormat, WebGLRenderer } from 'three';
import { Developer } from '../../../app/web/render/developer.ts';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { StoredLayer } from '../../../app/web/render/layer-store.ts';
import { layersOfScene, skiesOfScene } from '../../../app/web/render/layers-of-scene.ts';
import { Mixer } from '../../../app/web/render/mixer.ts';
import type { Tile } from '../../../app/web/render/scene.ts';
import { SceneLayers } from '../../../app/web/render/scene-layers.ts';
import { shownFrames } from '../../../app/web/render/shown-frames.ts';
import { SkyPictures } from '../../../app/web/render/sky-pictures.ts';
import type { Response } from '../../../core/camera/response.ts';
import { blendEntries, wholeFrame } from '../../../core/setup/blend-entries.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { buildWorld } from '../../../core/world/world.ts';

/** What tests call on this page: the app's renderer without the app. */
export interface Harness {
  /** Linear picture of a frame, three numbers a pixel, rows from the top, 1 = mid-grey. */
  picture(
    setupText: string,
    schemeId: string,
    frameId: string,
    width: number,
    height: number,
    samples: number,
  ): Promise<number[]>;
  /** A scheme’s blend, as `picture`. */
  blend(setupText: string, schemeId: string, width: number, height: number, samples: number): Promise<number[]>;
  /** Bytes that the develop shader puts on the screen for grey values given as ratios to mid-grey. */
  develop(midGreyRatios: number[], response: Response): number[];
  /** Bytes of the map of stops for grey values given as ratios to mid-grey: their levels, or their difference to others. */
  map(midGreyRatios: number[], others: number[] | null): number[];
}

const gl = new WebGLRenderer({ canvas: document.createElement('canvas') });

/** By their samples, kept from picture to picture as the page keeps its own: compiling programs anew takes longer than drawing. */
const renderers = new Map<number, LayerRenderer>();
const mixer = new Mixer(gl);

const rendererOf = (samples: number): LayerRenderer => {
  const renderer = renderers.get(samples) ?? new LayerRenderer(gl, { maxSamples: samples, coarseFirst: false });
  renderers.set(samples, renderer);
  return renderer;
};

/** Traces frames of a scheme, mixes them, and reads the linear picture back. */
const linearPicture = async (
  setupText: string,
  schemeId: string,
  frameId: string | null,
  size: { width: number; height: number },
  samples: number,
): Promise<number[]> => {
  const setup = parseSetup(setupText);
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  if (!scheme) throw new Error(`no scheme ${schemeId}`);
  const world = buildWorld(setup, scheme);
  const entries = frameId ? scheme.frames.filter(({ id }) => id === frameId).map(wholeFrame) : blendEntries(scheme);
  const shown = { name: 'test', world, frames: shownFrames(setup, scheme, world, entries), mode: scheme.blend.mode };
  const tile: Tile = { ...shown, screen: 'test', look: 'picture', against: null, marksFull: false, ...size };
  const scene = { tiles: [tile], size, samples, showsEarly: false };
  const wanted = layersOfScene(scene);
  const renderer = rendererOf(samples);
  const layers = renderer.want(world.stage, [...wanted.values()], size);
  renderer.runTo(samples);
  const skies = new SkyPictures(() => undefined);
  skies.want(skiesOfScene(scene));
  while (!skies.isSettled) await new Promise((resolve) => setTimeout(resolve, 1));
  const sceneLayers = new SceneLayers(skies);
  sceneLayers.set(new Map([...wanted.keys()].map((key, i) => [key, layers[i] as StoredLayer])), samples);
  const mixes = shown.frames.map((each) => sceneLayers.frameMix(shown, each));
  const target = mixer.mix(mixes, scheme.blend.mode, size.width, size.height);
  const rgba = new Float32Array(size.width * size.height * 4);
  gl.readRenderTargetPixels(target, 0, 0, size.width, size.height, rgba);
  skies.clear();
  return Array.from(
    { length: size.width * size.height * 3 },
    (_, i) => rgba[Math.floor(i / 3) * 4 + (i % 3)] as number,
  );
};

/** A row of grey texels, each value so many times. */
const greys = (ratios: number[], times: number): DataTexture => {
  const data = Float32Array.from(ratios.flatMap((v) => Array.from({ length: times }, () => [v, v, v, 1]).flat()));
  const texture = new DataTexture(data, ratios.length * times, 1, RGBAFormat, FloatType);
  texture.needsUpdate = true;
  return texture;
};

/** Bytes, three a pixel, of one row that is drawn on the card's canvas. */
const onScreen = (
  width: number,
  draw: (developer: Developer, size: { width: number; height: number }) => DataTexture[],
): number[] => {
  const developer = new Developer(gl);
  gl.setPixelRatio(1);
  gl.setSize(width, 1, false);
  const used = draw(developer, { width, height: 1 });
  const bytes = new Uint8Array(width * 4);
  const context = gl.getContext();
  context.readPixels(0, 0, width, 1, context.RGBA, context.UNSIGNED_BYTE, bytes);
  for (const texture of used) texture.dispose();
  developer.dispose();
  return [...bytes].filter((_, i) => i % 4 < 3);
};

const harness: Harness = {
  picture: (text, schemeId, frameId, width, height, samples) =>
    linearPicture(text, schemeId, frameId, { width, height }, samples),
  blend: (text, schemeId, width, height, samples) => linearPicture(text, schemeId, null, { width, height }, samples),
  develop: (midGreyRatios, response) =>
    onScreen(midGreyRatios.length, (developer, size) => {
      const texture = greys(midGreyRatios, 1);
      developer.picture({ texture, ...size }, size, response, false, 1);
      return [texture];
    }).filter((_, i) => i % 3 === 0),
  map: (midGreyRatios, others) => {
    const wide = 8;
    const bytes = onScreen(midGreyRatios.length * wide, (developer, size) => {
      const [texture, other] = [greys(midGreyRatios, wide), greys(others ?? [], wide)];
      if (others) developer.difference({ texture, ...size }, { texture: other, ...size }, size, 1);
      else developer.levels({ texture, ...size }, size, 1);
      return [texture, other];
    });
    // the middle of each: at the edges of bands lines are drawn
    return midGreyRatios.flatMap((_, i) => bytes.slice((i * wide + 3) * 3, (i * wide + 4) * 3));
  },
};

(window as unknown as { harness: Harness }).harness = harness;
