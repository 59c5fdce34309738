import { describe, expect, it } from 'vitest';
import { shadowRay } from '../../../app/web/walkaround/shadow-lines.ts';
import { type Eye, eyeOf, steppedPosition, type ViewKind } from '../../../app/web/walkaround/views.ts';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { distance, dot, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import type { StageSubject } from '../../../core/world/stage.ts';

const aim: Vec3 = [2, 1.2, -8];
const camera = cameraView({
  position: [0, 0.9, 0],
  aim,
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 24,
});
const kinds: readonly ViewKind[] = ['start', 'camera', 'above', 'side'];
const start = eyeOf('start', camera, aim, 8);
const step = (eye: Pick<Eye, 'position' | 'target'>, ...keys: string[]): Vec3 =>
  keys.reduce((position, key) => steppedPosition(key, { position, target: eye.target }) ?? position, eye.position);

describe('views of the walkaround', () => {
  it.each(kinds)('%s stays above the ground and looks at what the camera is aimed at', (kind) => {
    const { position, target } = eyeOf(kind, camera, aim, 8);
    expect(position[1]).toBeGreaterThan(0);
    expect(distance(target, aim)).toBeLessThan(1e-9);
  });

  it('the camera’s stands where the camera does and takes in all that it sees', () => {
    const { position, fieldDegrees } = eyeOf('camera', camera, aim, 8);
    expect(position).toEqual(camera.position);
    // 36 mm wide at 24 mm: twice the arctangent of 0.75
    expect(fieldDegrees).toBeGreaterThan((2 * Math.atan(0.75) * 180) / Math.PI);
  });

  it('above has the camera at the bottom, and side looks square to the camera’s axis (1e-9)', () => {
    const toCamera = sub(camera.position, aim);
    const above = sub(eyeOf('above', camera, aim, 8).position, aim);
    expect(above[0] * toCamera[0] + above[2] * toCamera[2]).toBeGreaterThan(0);
    const side = sub(eyeOf('side', camera, aim, 8).position, aim);
    expect(Math.abs(dot([side[0], 0, side[2]], toCamera))).toBeLessThan(1e-9);
  });
});

describe('steppedPosition', () => {
  it('arrow keys keep the distance, and the opposite key comes back (1e-9 m)', () => {
    for (const [there, back] of [
      ['ArrowLeft', 'ArrowRight'],
      ['ArrowUp', 'ArrowDown'],
    ] as const) {
      const moved = step(start, there);
      expect(distance(moved, start.position)).toBeGreaterThan(0.1);
      expect(distance(moved, aim)).toBeCloseTo(distance(start.position, aim), 9);
      expect(distance(step(start, there, back), start.position)).toBeLessThan(1e-9);
    }
  });

  it('plus comes closer along the line of sight, minus goes back', () => {
    const nearer = step(start, '+');
    expect(distance(nearer, aim)).toBeLessThan(distance(start.position, aim));
    expect(distance(step(start, '+', '-'), start.position)).toBeLessThan(1e-9);
  });

  it('stops 5 cm over the ground and straight above, however often a key is pressed', () => {
    const down = step(start, ...Array<string>(60).fill('ArrowDown'));
    expect(down[1]).toBeCloseTo(0.05, 6);
    const up = step(start, ...Array<string>(60).fill('ArrowUp'));
    expect(Math.hypot(up[0] - aim[0], up[2] - aim[2])).toBeLessThan(0.1);
  });

  it('leaves other keys alone', () => {
    expect(steppedPosition('Enter', start)).toBeNull();
    expect(steppedPosition('a', start)).toBeNull();
  });
});

describe('shadowRay', () => {
  const points = new Float64Array([0, 0, 0, 0, 1, 0]);
  const post: StageSubject = { id: 'post', name: 'Post', topMetres: 1, points, partStarts: [0, 6] };

  it('goes over the top to the tip: h d / (H − h) beyond a post, by similar triangles (1e-12)', () => {
    const { over, end, isEndless } = shadowRay(post, [0, 3, 4]);
    expect(over).toEqual([0, 1, 0]);
    expect(isEndless).toBe(false);
    expect(distance(end, [0, 0, -(1 * 4) / (3 - 1)])).toBeLessThan(1e-12);
  });

  it('from a lamp under the top it passes the top and goes on, never to the ground', () => {
    const { over, end, isEndless } = shadowRay(post, [0, 0.5, 4]);
    expect(isEndless).toBe(true);
    expect(over).toEqual([0, 1, 0]);
    expect(end[1]).toBeGreaterThan(1);
    expect(end[2]).toBeLessThan(0);
  });
});
