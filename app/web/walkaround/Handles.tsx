import { TransformControls } from '@react-three/drei';
import { useLayoutEffect, useRef, useState } from 'react';
import { Color, Euler, Line, Mesh, type Object3D } from 'three';
import { useApp } from '../state/app-store.ts';
import type { HeldThing } from './held-thing.ts';
import { useShift } from './use-shift.ts';

/** With Shift: a tenth of a metre, and fifteen degrees. */
const [stepMetres, stepRadians] = [0.1, Math.PI / 12];

/** One colour for all axes: their direction tells them apart. */
const colour = new Color('#d8d2c4');

/** Takes the handles out of the haze of the view and gives them the colour of words. */
const plainLook = (controls: Object3D | null): void => {
  controls?.traverse((child) => {
    if (!(child instanceof Mesh || child instanceof Line)) return;
    for (const material of [child.material].flat()) {
      Object.assign(material, { fog: false });
      if ('color' in material) (material.color as Color).copy(colour);
      // what the handles go back to when the pointer leaves them
      if ('tempColor' in material) (material.tempColor as Color).copy(colour);
      material.needsUpdate = true;
    }
  });
};

/** Handles that move what is selected, or turn it about the vertical. A drag is one entry of history. */
export const Handles = ({ held, mode }: { held: HeldThing; mode: 'move' | 'turn' }) => {
  const { begin, commit, edit } = useApp.getState();
  const inSteps = useShift();
  const [proxy, setProxy] = useState<Object3D | null>(null);
  const isDragged = useRef(false);
  const turns = mode === 'turn' && held.turnRadians !== null;
  useLayoutEffect(() => {
    if (!proxy || isDragged.current) return;
    proxy.position.set(...held.position);
    proxy.rotation.set(0, held.turnRadians ?? 0, 0);
    proxy.updateMatrixWorld();
  }, [proxy, held]);
  const onObjectChange = () => {
    if (!proxy || !isDragged.current) return;
    // Escape took the drag back: the rest of it does nothing
    if (useApp.getState().history.gestureStart === null) return;
    // about the vertical, whichever way round the three angles have come out
    const { y } = new Euler().setFromQuaternion(proxy.quaternion, 'YXZ');
    edit(turns ? held.turn(y) : held.move(proxy.position.toArray()));
  };
  return (
    <>
      <group ref={setProxy} />
      {proxy && (
        <TransformControls
          ref={plainLook as (controls: unknown) => void}
          object={proxy}
          mode={turns ? 'rotate' : 'translate'}
          showX={!turns}
          showZ={!turns}
          size={0.8}
          translationSnap={inSteps ? stepMetres : null}
          rotationSnap={inSteps ? stepRadians : null}
          onMouseDown={() => {
            isDragged.current = true;
            begin();
          }}
          onMouseUp={() => {
            isDragged.current = false;
            commit();
          }}
          onObjectChange={onObjectChange}
        />
      )}
    </>
  );
};
