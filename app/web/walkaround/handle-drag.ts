import { Euler, type Object3D } from 'three';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { HeldThing } from './held-thing.ts';

/** What a drag needs of the page's store. */
interface Steps {
  /** Whether a gesture is under way: Escape, or an undo, may end it before the pointer does. */
  readonly isUnderWay: () => boolean;
  readonly begin: () => void;
  readonly edit: (change: (setup: Setup) => Setup) => void;
  readonly commit: () => void;
  readonly cancel: () => void;
}

export interface HandleDrag {
  /** Told what is held, as the setup has it now. Outside a drag the proxy is put there. */
  readonly hold: (held: HeldThing) => void;
  readonly begin: () => void;
  /** The handles have moved or turned the proxy. */
  readonly change: (turns: boolean) => void;
  /** Ends the drag as one entry of history, or takes it back; false where none is under way. */
  readonly end: (keeps: boolean) => boolean;
}

/**
 * A drag of handles as one entry of history. Handles move a proxy; the setup takes what it can of that: places are rounded
 * and held within the world, a group turns about its middle, Escape takes all of it back. So the proxy is put where the
 * thing stands once the drag is over, or the next one would begin where the last pointer was.
 */
export const handleDrag = (proxy: Object3D, steps: Steps): HandleDrag => {
  let held: HeldThing | null = null;
  let isDragged = false;
  const putBack = () => {
    if (!held) return;
    proxy.position.set(...held.position);
    proxy.rotation.set(0, held.turnRadians ?? 0, 0);
    proxy.updateMatrixWorld();
  };
  return {
    hold: (next) => {
      held = next;
      if (!isDragged || !steps.isUnderWay()) putBack();
    },
    begin: () => {
      isDragged = true;
      steps.begin();
    },
    change: (turns) => {
      if (!held || !isDragged) return;
      // taken back: what the pointer does after that is no longer part of it
      if (!steps.isUnderWay()) return putBack();
      // about the vertical, whichever way round the three angles have come out
      const { y } = new Euler().setFromQuaternion(proxy.quaternion, 'YXZ');
      steps.edit(turns ? held.turn(y) : held.move(proxy.position.toArray()));
    },
    end: (keeps) => {
      if (!isDragged) return false;
      isDragged = false;
      if (keeps) steps.commit();
      else steps.cancel();
      putBack();
      return true;
    },
  };
};
