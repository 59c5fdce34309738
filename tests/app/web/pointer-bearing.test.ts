import { PerspectiveCamera } from 'three';
import { describe, expect, it } from 'vitest';
import { pointerBearing } from '../../../app/web/walkaround/pointer-bearing.ts';

const box = { left: 100, top: 50, width: 400, height: 400 };
const from = (x: number, y: number, z: number) => {
  const camera = new PerspectiveCamera(50, 1, 0.1, 100);
  camera.position.set(x, y, z);
  camera.lookAt(0, 0, 0);
  camera.updateMatrixWorld();
  return camera;
};
const centre = { clientX: 300, clientY: 250 };
const beside = (right: number, down: number) => ({ clientX: centre.clientX + right, clientY: centre.clientY + down });
const degrees = (radians: number | null) => (radians === null ? null : (radians * 180) / Math.PI);

describe('where the pointer is round a place', () => {
  it.each([
    [100, 0, 0],
    [0, -100, 90],
    [-70, -70, 135],
    [0, 100, -90],
  ])('from straight above, north up: %d right and %d down is at %d degrees (0.1)', (right, down, expected) => {
    // a hair from the south, so that north is up
    const bearing = degrees(pointerBearing(beside(right, down), box, from(0, 10, 0.001), [0, 0, 0]));
    expect(Math.abs((bearing ?? Number.NaN) - expected)).toBeLessThan(0.1);
  });

  it('aslant goes by the place on the ground, not on the screen: 45 degrees up, 100 up is due north', () => {
    expect(degrees(pointerBearing(beside(0, -50), box, from(0, 7, 7), [0, 0, 0]))).toBeCloseTo(90, 6);
    // seen from 45 degrees a circle is flattened: what is at 45 degrees on the screen is farther round
    const bearing = degrees(pointerBearing(beside(50, -50), box, from(0, 7, 7), [0, 0, 0])) ?? 0;
    expect(bearing).toBeGreaterThan(50);
    expect(bearing).toBeLessThan(70);
  });

  it('is not told (null) where the view is nearly level or the pointer over the horizon', () => {
    expect(pointerBearing(beside(50, 0), box, from(0, 0.5, 10), [0, 0, 0])).toBeNull();
    expect(pointerBearing(beside(0, -190), box, from(0, 2, 9), [0, 0, 0])).toBeNull();
    expect(pointerBearing(centre, box, from(0, 7, 7), [0, 0, 0])).toBeNull();
  });
});
