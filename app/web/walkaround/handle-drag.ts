import { Euler, type Object3D } from 'three';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { halfTurnRadians } from '../../../core/units/angle.ts';
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
  /** @param bearing of the pointer round what is held, as `change` has it */
  readonly begin: (bearing?: number | null) => void;
  /**
   * The handles have moved or turned the proxy.
   *
   * @param bearing where the pointer is round what is held, radians anticlockwise seen from above; null where the view is
   *   too flat to tell: then it is turned as the handles turn the proxy
   * @param stepRadians whole steps that it is turned to; null for none
   */
  readonly change: (turns: boolean, bearing?: number | null, stepRadians?: number | null) => void;
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
  /** Bearing of the pointer as last told, and the turn that goes with it. */
  let last: { readonly bearing: number; readonly turn: number } | null = null;
  const turnedTo = (bearing: number | null): number => {
    // about the vertical, whichever way round the three angles have come out
    if (bearing === null || !last) return new Euler().setFromQuaternion(proxy.quaternion, 'YXZ').y;
    last = { bearing, turn: last.turn + halfTurnRadians(bearing - last.bearing) };
    return last.turn;
  };
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
    begin: (bearing = null) => {
      isDragged = true;
      last = bearing === null ? null : { bearing, turn: held?.turnRadians ?? 0 };
      steps.begin();
    },
    change: (turns, bearing = null, stepRadians = null) => {
      if (!held || !isDragged) return;
      // taken back: what the pointer does after that is no longer part of it
      if (!steps.isUnderWay()) return putBack();
      if (!turns) return steps.edit(held.move(proxy.position.toArray()));
      const turn = turnedTo(bearing);
      const y = stepRadians ? Math.round(turn / stepRadians) * stepRadians : turn;
      proxy.rotation.set(0, y, 0);
      steps.edit(held.turn(y));
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
