import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import { projectToGround } from '../../../core/geometry/shadow.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { shadowReading } from '../../../core/readings/shadow-reading.ts';
import { traceLayers } from '../../../core/trace/layer.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../support/scenes.ts';

const size = { width: 320, height: 200, samples: 1 };
const view = cameraView({
  position: [1.2, 8, -2],
  aim: [0, 0, -5],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 22.5,
  focalLengthMm: 24,
});
const [foot, post] = [[0, 5] as const, { width: 0.16, depth: 0.05, height: 1 }];

/** A thin upright board at the foot, its broad side toward a lamp, and where the middle of its top's far edge throws its shadow. */
const board = (lamp: Vec3) => {
  const bearing = Math.atan2(foot[0] - lamp[0], foot[1] + lamp[2]);
  const stage = stageWith(
    subjectOf('board', [{ kind: 'box', widthMetres: post.width, depthMetres: post.depth, heightMetres: post.height }], {
      position: [foot[0], foot[1], 0],
      turnDegrees: (bearing * 180) / Math.PI,
    }),
  );
  const half = post.depth / 2;
  const top: Vec3 = [foot[0] + Math.sin(bearing) * half, post.height, -(foot[1] + Math.cos(bearing) * half)];
  return { stage, tip: projectToGround(lamp, top) as Vec3 };
};

const pixelOf = (point: Vec3): readonly [number, number] => {
  const [x, y] = projectPoint(view, point) as readonly [number, number];
  return [x * size.width, y * size.height];
};

/** Pixels between the projected tip and where the picture turns from dark to lit along the shadow's middle line. */
const edgeError = (lamp: Vec3): number => {
  const { stage, tip } = board(lamp);
  const [layer] = traceLayers(stage, view, [standing(lamp, tip, discEmitter(0))], size);
  const isLit = ([x, y]: readonly [number, number]) =>
    ((layer as Float64Array)[3 * (Math.floor(y) * size.width + Math.floor(x))] as number) > 0;
  const centre = ([x, y]: readonly [number, number]) => [Math.floor(x) + 0.5, Math.floor(y) + 0.5] as const;
  const start: Vec3 = [(foot[0] + tip[0]) / 2, 0, (-foot[1] + tip[2]) / 2];
  const along = (k: number) => pixelOf([start[0] + (tip[0] - start[0]) * k, 0, start[2] + (tip[2] - start[2]) * k]);
  let dark = centre(along(0));
  if (isLit(dark)) return Number.POSITIVE_INFINITY;
  for (let k = 0; k < 3; k += 1 / 512) {
    const here = centre(along(k));
    if (isLit(here)) {
      const [x, y] = pixelOf(tip);
      return Math.hypot((dark[0] + here[0]) / 2 - x, (dark[1] + here[1]) / 2 - y);
    }
    dark = here;
  }
  return Number.POSITIVE_INFINITY;
};

// lamp places in world axes: x east, y up, z south; the board stands at z = -5
const places: readonly Vec3[] = [
  [0, 2, -1],
  [-3, 1.8, -5],
  [3, 1.6, -4],
  [2.5, 2.2, -8],
  [0, 3, -9],
  [-4, 2.4, -7],
  [-1, 4, -4],
  [1.5, 1.5, -3.5],
];

// similar triangles: the tip is where the line from the lamp over the top meets the ground (checkvalues.md 8d)
describe('a traced shadow', () => {
  it.each(places)('from a lamp at (%d, %d, %d) ends within one pixel of the projected tip', (x, y, z) => {
    const error = edgeError([x, y, z]);
    console.log(`shadow edge from (${x}, ${y}, ${z}): ${error.toFixed(3)} px`);
    expect(error).toBeLessThanOrEqual(1);
  });

  it.each(places)(
    'from a lamp at (%d, %d, %d) has the tip that the reading names (abs 1e-9 m along the line)',
    (x, y, z) => {
      const lamp: Vec3 = [x, y, z];
      const { stage, tip } = board(lamp);
      const reading = shadowReading(stage, view, stage.subjects[0] as never, lamp);
      const [east, north] = reading.tip as readonly [number, number];
      // the reading names a corner of the far edge; both ends of that edge are equally far along the shadow
      const away = [tip[0] - lamp[0], tip[2] - lamp[2]] as const;
      const unit = Math.hypot(...away);
      const along = ((east - lamp[0]) * away[0] + (-north - lamp[2]) * away[1]) / unit;
      expect(Math.abs(along - unit)).toBeLessThanOrEqual(1e-9);
    },
  );
});
