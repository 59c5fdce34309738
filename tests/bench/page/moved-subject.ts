import type { WebGLRenderer } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { pebbleSetup } from '../../core/support/pebble-setup.ts';
import { cardName } from './timing.ts';
import { tracedLights } from './traced-lights.ts';

/** Frames of a subject that is dragged: each moves it, refits the stage, uploads it and traces one whole sample. */
export interface DragTimes {
  readonly triangles: number;
  readonly width: number;
  readonly height: number;
  readonly card: string;
  /** One time a frame, in order, milliseconds. */
  readonly frameMs: readonly number[];
  /** The part of it that the stage takes on the processor. */
  readonly stageMs: readonly number[];
}

const movedPost = (setup: Setup, metres: number): Setup => ({
  ...setup,
  subjects: setup.subjects.map((subject) =>
    subject.id === 'post' ? { ...subject, position: [metres, subject.position[1], 0] } : subject,
  ),
});

/** Drags the post over the pebbles; waits for the card by reading a pixel back, so each frame is paid in full. */
export const benchMovedSubject = (
  gl: WebGLRenderer,
  triangles: number,
  size: { width: number; height: number },
  frames: number,
): DragTimes => {
  const start = pebbleSetup(triangles, 'finer');
  const scheme = start.schemes[0] as Setup['schemes'][number];
  const renderer = new LayerRenderer(gl, { maxSamples: 1, coarseFirst: false });
  const pixel = new Float32Array(4);
  const [frameMs, stageMs]: [number[], number[]] = [[], []];
  let count = 0;
  for (let frame = -3; frame < frames; frame++) {
    const setup = movedPost(start, 0.05 * frame);
    const began = performance.now();
    const { stage, view, frames: all } = buildWorld(setup, scheme);
    const staged = performance.now();
    count = stage.tree.corners.length / 9;
    const source = all[0] && tracedLights(all[0])[0]?.source;
    if (!source) throw new Error('no light');
    const [layer] = renderer.want(stage, [{ label: 'p', view, source, bounces: 0 }], size);
    renderer.runTo(1);
    if (layer?.full) gl.readRenderTargetPixels(layer.full, 0, 0, 1, 1, pixel);
    // the first few compile shaders and build the tree
    if (frame < 0) continue;
    frameMs.push(performance.now() - began);
    stageMs.push(staged - began);
  }
  renderer.dispose();
  return { triangles: count, ...size, card: cardName(gl), frameMs, stageMs };
};
