import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians, halfTurnDegrees, radiansFromDegrees } from '../../../core/units/angle.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { documentPlace } from '../state/edits/document-place.ts';
import { moveSubject, turnSubject } from '../state/edits/move-subjects.ts';
import { movePass } from '../state/edits/pass-edits.ts';
import { cameraOf, moveCamera } from '../state/edits/place-edits.ts';
import type { Selection } from '../state/session-pointers.ts';

/** What is selected, as handles take hold of it. World axes, metres, radians. */
export interface HeldThing {
  /** Changes when something else is held. */
  readonly key: string;
  readonly name: string;
  readonly position: Vec3;
  /** About the vertical, as three turns things: anticlockwise seen from above; null for what is not turned. */
  readonly turnRadians: number | null;
  readonly move: (to: Vec3) => (setup: Setup) => Setup;
  readonly turn: (radians: number) => (setup: Setup) => Setup;
}

/** How fine what is moved by hand is kept, metres. */
const fineMetres = 1e-3;

/** To a tenth of a degree. */
const fineTurn = (degrees: number): number => Math.round(halfTurnDegrees(degrees) * 10) / 10 + 0;

const still = (setup: Setup): Setup => setup;

/** What handles hold; null where nothing is selected that they could move: nothing, the ground, what is locked. */
export const heldThing = (setup: Setup, schemeId: string, selection: Selection): HeldThing | null => {
  if (selection?.kind === 'camera') {
    const { position } = cameraOf(setup, schemeId);
    return {
      key: `camera ${schemeId}`,
      name: 'Camera',
      position: worldFromDocument(position),
      turnRadians: null,
      move: (to) => (s) => moveCamera(s, schemeId, documentPlace(to, fineMetres)),
      turn: () => still,
    };
  }
  if (selection?.kind === 'pass') {
    const { frameId, passId } = selection;
    const frame = setup.schemes.find(({ id }) => id === schemeId)?.frames.find(({ id }) => id === frameId);
    const pass = frame?.passes.find(({ id }) => id === passId);
    const place = pass?.waypoints[0];
    if (!pass || !place) return null;
    return {
      key: `pass ${schemeId} ${frameId} ${passId}`,
      name: pass.name,
      position: worldFromDocument(place.position),
      turnRadians: null,
      move: (to) => (s) => movePass(s, { schemeId, frameId, passId }, documentPlace(to, fineMetres)),
      turn: () => still,
    };
  }
  if (selection?.kind !== 'subject') return null;
  const subject = setup.subjects.find(({ id }) => id === selection.subjectId);
  if (!subject || subject.locked || subject.hidden) return null;
  return {
    key: `subject ${subject.id}`,
    name: subject.name,
    position: worldFromDocument(subject.position),
    turnRadians: -radiansFromDegrees(subject.turnDegrees),
    move: (to) => (s) => moveSubject(s, subject.id, documentPlace(to, fineMetres)),
    turn: (radians) => (s) => turnSubject(s, subject.id, fineTurn(-degreesFromRadians(radians))),
  };
};
