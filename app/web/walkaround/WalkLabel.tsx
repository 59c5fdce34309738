import { useFrame, useThree } from '@react-three/fiber';
import { useLayoutEffect, useState } from 'react';
import { Vector3 } from 'three';
import type { Vec3 } from '../../../core/geometry/vec.ts';

interface WalkLabelProps {
  /** World axes, metres. */
  readonly at: Vec3;
  readonly text: string;
  readonly isStrong?: boolean;
  /** Under the thing, where another name may be over it. */
  readonly isUnder?: boolean;
}

/** A small name beside a thing in the walkaround: plain words over the canvas, carried along when a frame is drawn. */
export const WalkLabel = ({ at, text, isStrong = false, isUnder = false }: WalkLabelProps) => {
  const canvas = useThree((state) => state.gl.domElement);
  const invalidate = useThree((state) => state.invalidate);
  const [element] = useState(() => document.createElement('span'));
  const [place] = useState(() => new Vector3());
  useLayoutEffect(() => {
    canvas.parentElement?.append(element);
    return () => element.remove();
  }, [canvas, element]);
  useLayoutEffect(() => {
    element.textContent = text;
    element.className = 'walk-label';
    element.classList.toggle('walk-label-strong', isStrong);
    element.classList.toggle('walk-label-under', isUnder);
  }, [element, text, isStrong, isUnder]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a name that moves needs a frame to move in
  useLayoutEffect(() => invalidate(), [at, invalidate]);
  useFrame(({ camera, size }) => {
    camera.updateMatrixWorld();
    place.set(...at).project(camera);
    element.style.visibility = Math.abs(place.z) < 1 ? 'visible' : 'hidden';
    const [x, y] = [((place.x + 1) / 2) * size.width, ((1 - place.y) / 2) * size.height];
    element.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)`;
  });
  return null;
};
