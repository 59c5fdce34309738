import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { KeptLayers, type Shot } from '../../../core/trace/kept-layers.ts';
import { stageWith } from '../support/scenes.ts';

/** Straight up into the sky, where no ray meets anything. */
const view = cameraView({
  position: [0, 1.5, 0],
  aim: [0, 100, -1],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 24,
});
// five numbers a pixel: one of these fits into the 20 million that are kept, two don't
const shot = (width: number): Shot => ({ view, bounces: 0, width, height: 1000 });
const sky = [{ kind: 'sky' }] as const;

describe('KeptLayers', () => {
  it('lets go of what was used longest ago when memory is short, and of nothing else', () => {
    const layers = new KeptLayers();
    layers.setStage(stageWith());
    const gather = (width: number) => [...layers.gather(shot(width), sky, 1)];
    const kept = () => [2100, 2200, 10].map((width) => layers.samplesOf(shot(width), sky));
    gather(2100);
    gather(10);
    layers.trim();
    expect(kept()).toEqual([1, 0, 1]);
    gather(2200);
    layers.trim();
    expect(kept()).toEqual([0, 1, 1]);
  });
});
