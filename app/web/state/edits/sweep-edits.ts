import type { Setup } from '../../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../../core/sweep/cell.ts';
import { duplicateScheme, renameScheme } from './frame-edits.ts';
import { changePass, type PassPlace } from './within.ts';

/** Whether a cell still fits: its lamp may be gone from the bag by now, or its frame may have become shorter. */
const fits = ({ schemes, lamps }: Setup, { schemeId, frameId }: PassPlace, { pass }: SweepCell): boolean => {
  const frame = schemes.find(({ id }) => id === schemeId)?.frames.find(({ id }) => id === frameId);
  return frame !== undefined && pass.off <= frame.seconds && lamps.some(({ id }) => id === pass.lampId);
};

/** The pass becomes the cell's. A cell that fits no longer is refused. */
export const applyCell = (setup: Setup, place: PassPlace, cell: SweepCell): Setup =>
  fits(setup, place, cell) ? changePass(setup, place, (pass) => (pass.id === cell.pass.id ? cell.pass : pass)) : setup;

/** Longest name of a scheme. */
const longestName = 80;

/** Text cut to a length, whole characters only. */
const cutTo = (text: string, most: number): string => text.slice(0, Math.max(most, 0)).replace(/[\ud800-\udbff]$/, '');

/** "Side · 3:00 · knee · 0.5 m": what is long is cut at the scheme's own name, so that its cells can be told apart. */
const nameOf = (schemeName: string, { column, row }: SweepCell): string => {
  const cellName = ` · ${[column, row].join(' · ')}`;
  return cutTo(cutTo(schemeName, longestName - cellName.length) + cellName, longestName);
};

/**
 * A copy of the scheme after it, with the cell's pass and the cell's name. Where there is no room for another scheme, or
 * the cell fits no longer, nothing changes and the scheme's own id comes back.
 */
export const schemeOfCell = (
  setup: Setup,
  place: PassPlace,
  cell: SweepCell,
): { readonly setup: Setup; readonly schemeId: string } => {
  const original = setup.schemes.find(({ id }) => id === place.schemeId);
  const copy = duplicateScheme(setup, place.schemeId);
  if (!original || copy.schemeId === place.schemeId || !fits(setup, place, cell))
    return { setup, schemeId: place.schemeId };
  const named = renameScheme(copy.setup, copy.schemeId, nameOf(original.name, cell));
  return { setup: applyCell(named, { ...place, schemeId: copy.schemeId }, cell), schemeId: copy.schemeId };
};
