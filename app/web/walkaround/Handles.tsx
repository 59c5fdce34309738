import { TransformControls } from '@react-three/drei';
import { invalidate, useThree } from '@react-three/fiber';
import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { Color, Line, Mesh, type Object3D } from 'three';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { handleDrag } from './handle-drag.ts';
import type { HeldThing } from './held-thing.ts';
import { pointerBearing } from './pointer-bearing.ts';
import { releaseHandles } from './release-handles.ts';
import { usePointer } from './use-pointer.ts';
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

const steps = {
  isUnderWay: () => useApp.getState().history.gestureStart !== null,
  begin: () => useApp.getState().begin(),
  edit: (change: (setup: Setup) => Setup) => useApp.getState().edit(change),
  commit: () => useApp.getState().commit(),
  cancel: () => useApp.getState().cancel(),
};

/** Handles that move what is selected, or turn it about the vertical. A drag is one entry of history. */
export const Handles = ({ held, mode }: { held: HeldThing; mode: 'move' | 'turn' }) => {
  const inSteps = useShift();
  const [proxy, setProxy] = useState<Object3D | null>(null);
  const controls = useRef<Object3D | null>(null);
  const drag = useMemo(() => proxy && handleDrag(proxy, steps), [proxy]);
  const turns = mode === 'turn' && held.turnRadians !== null;
  const { camera, gl } = useThree();
  const pointer = usePointer();
  const bearing = () =>
    turns && pointer.current
      ? pointerBearing(pointer.current, gl.domElement.getBoundingClientRect(), camera, held.position)
      : null;
  const takeControls = useCallback((made: unknown) => {
    controls.current = made as Object3D | null;
    plainLook(controls.current);
  }, []);
  useLayoutEffect(() => {
    drag?.hold(held);
    invalidate();
  }, [drag, held]);
  useLayoutEffect(() => {
    const letGo = (keeps: boolean) => {
      if (drag?.end(keeps)) releaseHandles(controls.current);
    };
    const onCancel = () => letGo(false);
    const onBlur = () => letGo(true);
    window.addEventListener('pointercancel', onCancel);
    window.addEventListener('blur', onBlur);
    return () => {
      window.removeEventListener('pointercancel', onCancel);
      window.removeEventListener('blur', onBlur);
      // something else is held now, or the walkaround is closed
      letGo(true);
    };
  }, [drag]);
  return (
    <>
      <group ref={setProxy} />
      {proxy && drag && (
        <TransformControls
          ref={takeControls}
          object={proxy}
          mode={turns ? 'rotate' : 'translate'}
          showX={!turns}
          showZ={!turns}
          size={0.8}
          translationSnap={inSteps ? stepMetres : null}
          onMouseDown={() => drag.begin(bearing())}
          onMouseUp={() => {
            drag.end(true);
            invalidate();
          }}
          onObjectChange={() => drag.change(turns, bearing(), inSteps ? stepRadians : null)}
        />
      )}
    </>
  );
};
