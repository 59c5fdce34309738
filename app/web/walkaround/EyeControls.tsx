import { OrbitControls } from '@react-three/drei';
import { invalidate } from '@react-three/fiber';
import { type ComponentRef, type RefObject, useEffect, useRef } from 'react';
import type { PerspectiveCamera } from 'three';
import { type Eye, lowestAngle, steppedPosition } from './views.ts';

type Controls = ComponentRef<typeof OrbitControls>;

const eyeNow = ({ object, target }: Controls): Pick<Eye, 'position' | 'target'> => ({
  position: object.position.toArray(),
  target: target.toArray(),
});

const apply = (controls: Controls, { position, target, fieldDegrees }: Eye): void => {
  const camera = controls.object as PerspectiveCamera;
  camera.fov = fieldDegrees;
  camera.updateProjectionMatrix();
  camera.position.set(...position);
  controls.target.set(...target);
  controls.maxPolarAngle = lowestAngle({ position, target });
  controls.update();
  // a new field of view alone is no change to the controls
  invalidate();
};

/** Holds the eye where `eye` says until the user turns it by hand or key; then where the user left it, until asked anew. */
export const EyeControls = ({
  eye,
  asked,
  keysFrom,
}: {
  eye: Eye;
  asked: object;
  keysFrom: RefObject<HTMLElement | null>;
}) => {
  const controls = useRef<Controls>(null);
  const wasAsked = useRef<object | null>(null);
  const isMoved = useRef(false);
  useEffect(() => {
    if (wasAsked.current !== asked) isMoved.current = false;
    wasAsked.current = asked;
    if (controls.current && !isMoved.current) apply(controls.current, eye);
  }, [eye, asked]);
  useEffect(() => {
    const element = keysFrom.current;
    const onKeyDown = (event: KeyboardEvent) => {
      if (!controls.current || event.ctrlKey || event.metaKey || event.altKey) return;
      const position = steppedPosition(event.key, eyeNow(controls.current));
      if (!position) return;
      event.preventDefault();
      isMoved.current = true;
      controls.current.object.position.set(...position);
      controls.current.update();
    };
    element?.addEventListener('keydown', onKeyDown);
    return () => element?.removeEventListener('keydown', onKeyDown);
  }, [keysFrom]);
  return (
    <OrbitControls
      ref={controls}
      makeDefault
      enableDamping={false}
      onStart={() => {
        isMoved.current = true;
      }}
      onChange={() => {
        if (controls.current) controls.current.maxPolarAngle = lowestAngle(eyeNow(controls.current));
      }}
    />
  );
};
