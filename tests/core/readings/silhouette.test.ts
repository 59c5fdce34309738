import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const [radius, away] = [0.5, 10];
const ball = subjectOf('ball', [{ kind: 'sphere', position: [0, 0, 3.5], radiusMetres: radius, sides: 64 }]);
const view = cameraView({
  position: [0, 4, away],
  aim: [0, 4, 0],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 100,
});
const silhouette = silhouetteOf(stageWith(ball), view, 0);

describe('silhouetteOf', () => {
  it('finds outline points that lie on the ball’s true outline: normals square to the line of sight (8 degrees; a face spans 5.6)', () => {
    expect(silhouette.edge.length).toBeGreaterThan(100);
    for (const { position, normal } of silhouette.edge) {
      const sight = [position[0], position[1] - 4, position[2] - away] as const;
      const cosine = (sight[0] * normal[0] + sight[1] * normal[1] + sight[2] * normal[2]) / Math.hypot(...sight);
      expect(Math.abs(Math.asin(cosine)) * (180 / Math.PI)).toBeLessThanOrEqual(8);
    }
  });

  it('leaves out what something nearer covers and where the subject stands on the ground', () => {
    const box = subjectOf('box', [
      { kind: 'box', position: [0, 5, 0], widthMetres: 1, depthMetres: 1, heightMetres: 1 },
    ]);
    const low = cameraView({
      position: [0, 0.5, 5],
      aim: [0, 0.5, -5],
      rollRadians: 0,
      sensorWidthMm: 36,
      sensorHeightMm: 24,
      focalLengthMm: 50,
    });
    const { edge } = silhouetteOf(stageWith(box), low, 0);
    expect(edge.length).toBeGreaterThan(50);
    const heights = edge.map(({ position }) => position[1]);
    const foot = edge.filter(({ position }) => position[1] < 0.005 && Math.abs(position[0]) < 0.45);
    expect(Math.max(...heights)).toBeGreaterThan(0.99);
    expect(foot).toHaveLength(0);
  });
});
