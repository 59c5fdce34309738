import type { Texture, WebGLRenderer } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import { Mixer } from '../../../app/web/render/mixer.ts';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import { layerWeight } from '../../../core/trace/layer-weights.ts';
import { buildWorld, type World } from '../../../core/world/world.ts';
import { type TracedLight, tracedLights } from './traced-lights.ts';

/** Times in milliseconds, medians of several rounds in one run. */
export interface MovedLampTimes {
  readonly card: string;
  readonly triangles: number;
  readonly width: number;
  readonly height: number;
  /** One sample: first hits and one lamp's shadowed light. */
  readonly sampleMs: number;
  /** From a moved lamp to the developed picture at full size, first hits kept. */
  readonly movedFullMs: number;
  /** The same at an eighth of the size, as while dragging on a slow card. */
  readonly movedCoarseMs: number;
  /** Mixing and developing alone, as after a change of level or exposure. */
  readonly remixMs: number;
  /** One sample of light bounced once, and twice, first hits kept. */
  readonly bouncedOnceMs: number;
  readonly bouncedTwiceMs: number;
}

/** 1,500 stones and a post on the ground, one torch at knee height. */
const stonesSetup = () =>
  validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'bench',
    name: 'Bench',
    ground: {
      relief: [{ kind: 'stones', count: 1500, heightMetres: [0.05, 0.4], centre: [0, 9], radiusMetres: 10, seed: 7 }],
    },
    subjects: [
      {
        id: 'post',
        name: 'Post',
        position: [0, 8, 0],
        parts: [{ kind: 'cylinder', radiusMetres: 0.2, heightMetres: 2, sides: 128, topRadiusMetres: 0.15 }],
      },
      { id: 'ball', name: 'Ball', position: [-2, 9, 0], parts: [{ kind: 'sphere', radiusMetres: 0.5, sides: 24 }] },
    ],
    camera: { position: [0, 0, 1.5], aim: [0, 8, 0.6], focalLengthMm: 24, sensor: { widthMm: 36, heightMm: 20.25 } },
    lamps: [
      {
        kind: 'torch',
        id: 'torch',
        name: 'Torch',
        output: { from: 'lumens', lumens: 100 },
        beam: { shape: 'spot', beamDegrees: 60 },
      },
    ],
    schemes: [
      {
        id: 's',
        name: 'S',
        frames: [
          {
            id: 'f',
            name: 'F',
            passes: [
              {
                id: 'p',
                name: 'P',
                lampId: 'torch',
                off: 5,
                waypoints: [{ position: [5, 8, 0.5], aim: [0, 8, 0.3] }],
              },
            ],
          },
        ],
      },
    ],
  });

const movedBy = (source: TracedLight['source'], metres: number): TracedLight['source'] =>
  source.kind !== 'lamp'
    ? source
    : {
        ...source,
        path: source.path.map((p) => ({ ...p, position: [p.position[0], p.position[1], p.position[2] + metres] })),
      };

const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;

const cardName = (gl: WebGLRenderer): string => {
  const context = gl.getContext();
  const info = context.getExtension('WEBGL_debug_renderer_info');
  return String(context.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : context.RENDERER));
};

/** Traces, moves the lamp, traces again; waits for the card by reading a pixel back. */
export const benchMovedLamp = (gl: WebGLRenderer, width: number, height: number, rounds = 5): MovedLampTimes => {
  const setup = stonesSetup();
  const world: World = buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]);
  const frame = world.frames[0] as World['frames'][number];
  const light = tracedLights(frame)[0] as TracedLight;
  const pixel = new Float32Array(4);
  const mixer = new Mixer(gl);
  /** Traces what is not kept yet, mixes, and waits. `step` moves the camera, so that first hits are new. */
  const show = (
    renderer: LayerRenderer,
    source: TracedLight['source'],
    size: { width: number; height: number },
    step = 0,
    bounces: World['bounces'] = 0,
  ): number => {
    const [x, y, z] = world.view.position;
    const view = { ...world.view, position: [x + step * 0.01, y, z] as const };
    const start = performance.now();
    const [layer] = renderer.want(world.stage, [{ label: 'p', view, source, bounces }], size);
    renderer.runTo(1);
    const weighted = [
      {
        texture: layer?.full?.texture as Texture,
        weight: layerWeight(frame, light),
        openShare: null,
        holderWeight: null,
        behind: [],
      },
    ];
    const mix = { layers: weighted, development: frame.development, view, weight: 1, mask: null };
    const target = mixer.mix([mix], 'add', size.width, size.height);
    gl.readRenderTargetPixels(target, 0, 0, 1, 1, pixel);
    return performance.now() - start;
  };
  const full = { width, height };
  const eighth = { width: Math.round(width / 8), height: Math.round(height / 8) };
  const renderer = new LayerRenderer(gl, { maxSamples: 1, coarseFirst: false });
  const times: Record<'sample' | 'full' | 'coarse' | 'remix' | 'once' | 'twice', number[]> = {
    sample: [],
    full: [],
    coarse: [],
    remix: [],
    once: [],
    twice: [],
  };
  // shaders compiled and the stage uploaded before anything is timed
  for (const size of [full, eighth]) show(renderer, movedBy(light.source, 9), size);
  for (const bounces of [1, 2] as const) show(renderer, light.source, eighth, 0, bounces);
  for (let round = 1; round <= rounds; round++) {
    times.sample.push(show(renderer, light.source, full, round));
    times.remix.push(show(renderer, light.source, full, round));
    times.full.push(show(renderer, movedBy(light.source, 0.1 * round), full, round));
    times.once.push(show(renderer, light.source, full, round, 1));
    times.twice.push(show(renderer, light.source, full, round, 2));
    show(renderer, light.source, eighth, round);
    times.coarse.push(show(renderer, movedBy(light.source, 0.1 * round), eighth, round));
  }
  renderer.dispose();
  mixer.dispose();
  return {
    card: cardName(gl),
    triangles: world.stage.tree.corners.length / 9,
    width,
    height,
    sampleMs: median(times.sample),
    movedFullMs: median(times.full),
    movedCoarseMs: median(times.coarse),
    remixMs: median(times.remix),
    bouncedOnceMs: median(times.once),
    bouncedTwiceMs: median(times.twice),
  };
};
