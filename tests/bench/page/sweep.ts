import type { Texture, WebGLRenderer } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { Mixer } from '../../../app/web/render/mixer.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { type PassPlace, passAt } from '../../../core/sweep/pass-at.ts';
import { setupOfCell } from '../../../core/sweep/setup-of-cell.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import { holderWeight, layerWeight, timeWithHolders } from '../../../core/trace/layer-weights.ts';
import { buildWorld, type World, type WorldFrame } from '../../../core/world/world.ts';
import { tracedLights } from './traced-lights.ts';

/** Times in milliseconds within one run. */
export interface SweepTimes {
  readonly cells: number;
  /** One sample at full size: first hits and the swept lamp's shadowed light; median of several. */
  readonly sampleMs: number;
  /** From a cell to its first developed picture, mean of all cells; first hits and what all cells share included. */
  readonly tileMs: number;
  /** The same for pictures of 16 samples, mean of the first four. */
  readonly refinedMs: number;
}

const fullSize: Size = { width: 960, height: 540 };
const tileSize: Size = { width: 160, height: 90 };
const refinedSamples = 16;

/** The setup seen by a sensor as wide as the pictures. */
const wide = (text: string): Setup => {
  const setup = parseSetup(text);
  const { sensor } = setup.camera;
  return { ...setup, camera: { ...setup.camera, sensor: { ...sensor, heightMm: (sensor.widthMm * 9) / 16 } } };
};

/** Traces a sweep of 12 places at 3 heights, tile by tile; waits for the card by reading a pixel back. */
export const benchSweep = (gl: WebGLRenderer, text: string, place: PassPlace): SweepTimes => {
  const setup = wide(text);
  const cells = sweepCells(setup, place, { kind: 'angles', steps: 12, heightsMetres: [0.3, 1, 2.2] });
  const mixer = new Mixer(gl);
  const pixel = new Float32Array(4);
  const worldOf = (of: Setup): { world: World; frame: WorldFrame } => {
    const world = buildWorld(of, passAt(of, place).scheme);
    return { world, frame: world.frames.find(({ id }) => id === place.frameId) as WorldFrame };
  };
  /** Traces the lights of a frame as far as they are not kept, mixes, and waits. */
  const show = (
    renderer: LayerRenderer,
    { world, frame }: ReturnType<typeof worldOf>,
    size: Size,
    samples: number,
  ): number => {
    const start = performance.now();
    const lights = tracedLights(frame);
    const wanted = lights.map(({ id, source }) => ({ label: id, view: frame.view, source, bounces: 0 as const }));
    const layers = renderer.want(world.stage, wanted, size, samples);
    renderer.runTo(samples);
    const weighted = lights.map((light, i) => ({
      texture: layers[i]?.full?.texture as Texture,
      weight: layerWeight(frame, light),
      openShare: null,
      holderWeight: holderWeight(frame, light),
      behind: timeWithHolders(frame, light),
    }));
    const mix = { layers: weighted, development: frame.development, view: frame.view, weight: 1, mask: null };
    gl.readRenderTargetPixels(mixer.mix([mix], 'add', size.width, size.height), 0, 0, 1, 1, pixel);
    return performance.now() - start;
  };
  const tilesIn = (some: typeof cells, samples: number): number => {
    const renderer = new LayerRenderer(gl, { maxSamples: samples, coarseFirst: false });
    // the stage uploaded before anything is timed
    show(renderer, worldOf(setup), { width: 16, height: 9 }, 1);
    const start = performance.now();
    for (const cell of some) show(renderer, worldOf(setupOfCell(setup, place, cell)), tileSize, samples);
    const spent = performance.now() - start;
    renderer.dispose();
    return spent / some.length;
  };
  const sampleMs = (rounds: number): number => {
    const renderer = new LayerRenderer(gl, { maxSamples: 1, coarseFirst: false });
    const { world, frame } = worldOf(setup);
    const lamps = frame.lights.filter(({ source }) => source.kind === 'lamp');
    const times = Array.from({ length: rounds + 1 }, (_, step) => {
      const [x, y, z] = frame.view.position;
      // the camera steps aside, so that first hits are new
      const view = { ...frame.view, position: [x + step * 0.01, y, z] as const };
      return show(renderer, { world, frame: { ...frame, lights: lamps, view } }, fullSize, 1);
    });
    renderer.dispose();
    const [, ...warm] = times;
    return warm.sort((a, b) => a - b)[Math.floor(rounds / 2)] as number;
  };
  const full = sampleMs(5);
  const tileMs = tilesIn(cells, 1);
  const refinedMs = tilesIn(cells.slice(0, 4), refinedSamples);
  mixer.dispose();
  return { cells: cells.length, sampleMs: full, tileMs, refinedMs };
};
