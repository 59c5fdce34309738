import type { Object3D } from 'three';

interface Handles {
  onPointerUp(event: Pick<PointerEvent, 'button' | 'clientX' | 'clientY'>): void;
}

/**
 * Has three's handles let go of what they drag. They do so of themselves only when the pointer goes up; meanwhile the eye
 * can't be turned. Their type keeps what they do then to itself.
 */
export const releaseHandles = (controls: Object3D | null): void =>
  (controls as (Object3D & Handles) | null)?.onPointerUp({ button: 0, clientX: 0, clientY: 0 });
