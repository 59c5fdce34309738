import { type Texture, WebGLRenderer } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import { Mixer } from '../../../app/web/render/mixer.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { layerWeight } from '../../../core/trace/picture.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { benchMovedLamp } from './bench-moved-lamp.ts';

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
  ): number[];
  /** Times of a moved lamp over 31,000 triangles. */
  movedLamp(width: number, height: number): ReturnType<typeof benchMovedLamp>;
}

const gl = new WebGLRenderer({ canvas: document.createElement('canvas') });

const harness: Harness = {
  movedLamp: (width, height) => benchMovedLamp(gl, width, height),
  picture(setupText, schemeId, frameId, width, height, samples) {
    const setup = parseSetup(setupText);
    const scheme = setup.schemes.find(({ id }) => id === schemeId);
    if (!scheme) throw new Error(`no scheme ${schemeId}`);
    const world = buildWorld(setup, scheme);
    const frame = world.frames.find(({ id }) => id === frameId);
    if (!frame) throw new Error(`no frame ${frameId}`);
    const renderer = new LayerRenderer(gl, { maxSamples: samples, coarseFirst: false });
    const mixer = new Mixer(gl);
    const layers = renderer.want(
      world.stage,
      frame.lights.map((light) => ({ label: light.id, view: world.view, source: light.source })),
      { width, height },
    );
    renderer.runTo(samples);
    const weighted = layers.map((layer, i) => ({
      texture: layer.full?.texture as Texture,
      weight: layerWeight(frame, frame.lights[i] as (typeof frame.lights)[number]),
    }));
    const mix = { layers: weighted, whiteBalance: frame.whiteBalance, weight: 1 };
    const target = mixer.mix('test', [mix], 'lighten', width, height);
    const rgba = new Float32Array(width * height * 4);
    gl.readRenderTargetPixels(target, 0, 0, width, height, rgba);
    renderer.dispose();
    mixer.dispose();
    return Array.from({ length: width * height * 3 }, (_, i) => rgba[Math.floor(i / 3) * 4 + (i % 3)] as number);
  },
};

(window as unknown as { harness: Harness }).harness = harness;

// a bench run on a machine without this test runner: results go to the server the page came from
const bench = new URLSearchParams(location.search).get('bench');
if (bench === 'moved-lamp') {
  const result = { bench, ...benchMovedLamp(gl, 1280, 720) };
  void fetch('/result', { method: 'POST', body: JSON.stringify(result) }).catch(() => undefined);
}
