import type { Position, Subject } from '../../../core/setup/schema/setup.ts';
import { measuredLength } from '../../../core/units/measured-length.ts';
import { useApp } from '../state/app-store.ts';
import { scaleScan } from '../state/edits/scale-scan.ts';
import { useSession } from '../state/session.ts';

/** A place carried along when everything grows about a middle. */
const grown = (place: Position, middle: Position, factor: number): Position => {
  const at = (axis: 0 | 1 | 2) => middle[axis] + (place[axis] - middle[axis]) * factor;
  return [at(0), at(1), at(2)];
};

/**
 * Makes a scan larger, so that what the tape measures is really so long; the tape's ends go with it. Where the scan can't
 * be so large, the user is told, and the tape stays too.
 */
export const setTrueLength = (scan: Subject, from: Position, to: Position, realMetres: number): void => {
  const { history, edit } = useApp.getState();
  const { metres } = measuredLength(from, to);
  edit((setup) => scaleScan(setup, scan.id, metres, realMetres));
  if (useApp.getState().history.present === history.present) return;
  const at = (place: Position) => grown(place, scan.position, realMetres / metres);
  useSession.getState().set({ tape: { from: at(from), to: at(to) } });
};
