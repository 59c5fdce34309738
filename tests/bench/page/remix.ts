import type { WebGLRenderer } from 'three';
import { Developer } from '../../../app/web/render/developer.ts';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size, StoredLayer } from '../../../app/web/render/layer-store.ts';
import { layersOfScene } from '../../../app/web/render/layers-of-scene.ts';
import { Mixer } from '../../../app/web/render/mixer.ts';
import type { Tile } from '../../../app/web/render/scene.ts';
import { SceneLayers } from '../../../app/web/render/scene-layers.ts';
import { shownFrames } from '../../../app/web/render/shown-frames.ts';
import { SkyPictures } from '../../../app/web/render/sky-pictures.ts';
import { wholeFrame } from '../../../core/setup/blend-entries.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type World } from '../../../core/world/world.ts';
import { litPebbles } from './lit-pebbles.ts';
import { changes, withCamera, withLamps } from './remix-changes.ts';
import { median } from './timing.ts';

/** Times in milliseconds from a changed setup to its picture on the canvas; medians of rounds in one run. */
export interface RemixTimes {
  readonly triangles: number;
  readonly lamps: number;
  /** One sample of the scene with one lamp: first hits and its light, mixed and developed; and with all lamps. */
  readonly oneLampMs: number;
  readonly allLampsMs: number;
  /** One lamp changed: nothing is traced. */
  readonly levelMs: number;
  readonly gelMs: number;
  readonly secondsMs: number;
  readonly isoMs: number;
  /** One lamp moved: its layer is traced, first hits are kept. */
  readonly movedMs: number;
}

/** A world without moon and sky. */
const lampsAlone = (world: World): World => ({
  ...world,
  frames: world.frames.map((frame) => ({
    ...frame,
    lights: frame.lights.filter(({ source }) => source.kind === 'lamp'),
  })),
});

/** As the page does it: world, wanted layers, tracing of what is new, mixing, developing; a pixel of the canvas is waited for. */
const showing = (gl: WebGLRenderer, size: Size) => {
  const renderer = new LayerRenderer(gl, { maxSamples: 1, coarseFirst: false });
  const mixer = new Mixer(gl);
  const developer = new Developer(gl);
  const sceneLayers = new SceneLayers(new SkyPictures(() => undefined));
  const context = gl.getContext();
  const pixel = new Uint8Array(4);
  gl.setPixelRatio(1);
  gl.setSize(size.width, size.height, false);
  return (setup: Setup): { ms: number; traced: number } => {
    renderer.forgetCounts();
    const start = performance.now();
    const [scheme] = setup.schemes as [Scheme];
    const world = lampsAlone(buildWorld(setup, scheme));
    const frames = shownFrames(setup, scheme, world, scheme.frames.map(wholeFrame));
    const shown = { name: 's', world, frames, mode: 'add' as const };
    const tile: Tile = { ...shown, screen: 's', look: 'picture', against: null, marksFull: false, ...size };
    const wanted = layersOfScene({ tiles: [tile], size, samples: 1, showsEarly: false });
    const layers = renderer.want(world.stage, [...wanted.values()], size, 1);
    renderer.runTo(1);
    sceneLayers.set(new Map([...wanted.keys()].map((key, i) => [key, layers[i] as StoredLayer])), 1);
    const mixes = frames.map((each) => sceneLayers.frameMix(shown, each));
    const picture = mixer.mix(mixes, 'add', size.width, size.height);
    gl.setRenderTarget(null);
    developer.picture(picture, size, 'soft', false, 1);
    context.readPixels(0, 0, 1, 1, context.RGBA, context.UNSIGNED_BYTE, pixel);
    const ms = performance.now() - start;
    return { ms, traced: Object.values(renderer.counters.light).reduce((sum, n) => sum + n, renderer.counters.hits) };
  };
};

/** Many lamps over the pebbles: what one change costs against one sample. */
export const benchRemix = (
  gl: WebGLRenderer,
  triangles: number,
  lamps: number,
  size: Size,
  rounds: number,
): RemixTimes => {
  const setup = litPebbles(triangles, 'torch', lamps);
  const show = showing(gl, size);
  const times: Record<keyof typeof changes | 'one' | 'all', number[]> = {
    one: [],
    all: [],
    level: [],
    gel: [],
    seconds: [],
    iso: [],
    moved: [],
  };
  const expected: Record<keyof typeof times, number> = {
    one: 2,
    all: lamps + 1,
    level: 0,
    gel: 0,
    seconds: 0,
    iso: 0,
    moved: 1,
  };
  for (let round = 0; round <= rounds; round++) {
    // the camera steps aside, so that nothing is known yet
    const here = withCamera(setup, 0.01 * round);
    const take = (name: keyof typeof times, shown: Setup) => {
      const { ms, traced } = show(shown);
      if (traced !== expected[name]) throw new Error(`${name}: ${traced} pictures traced, not ${expected[name]}`);
      // the first round compiles and uploads
      if (round > 0) times[name].push(ms);
    };
    take('one', withLamps(withCamera(setup, -1 - 0.01 * round), 1));
    take('all', here);
    for (const name of ['level', 'gel', 'seconds', 'iso', 'moved'] as const) {
      take(name, changes[name](here, round));
      show(here);
    }
  }
  return {
    triangles,
    lamps,
    oneLampMs: median(times.one),
    allLampsMs: median(times.all),
    levelMs: median(times.level),
    gelMs: median(times.gel),
    secondsMs: median(times.seconds),
    isoMs: median(times.iso),
    movedMs: median(times.moved),
  };
};
