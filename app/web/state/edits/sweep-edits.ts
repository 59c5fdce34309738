import { retimedPass } from '../../../../core/passes/retimed-pass.ts';
import type { Pass, Setup } from '../../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../../core/sweep/cell.ts';
import type { SweepKind } from '../../../../core/sweep/sweep-plan.ts';
import { cutTo, longestName } from './cut-to.ts';
import { duplicateScheme, renameScheme } from './frame-edits.ts';
import { changePass, type PassPlace } from './within.ts';

/** Whether a kind of sweep changes level and count. */
const setsDose = (kind: SweepKind): boolean => kind === 'distances' || kind === 'ratios';

/** Whether a cell still fits: its lamp may be gone from the bag by now, or its frame may have become shorter. */
const fits = (
  { schemes, lamps }: Setup,
  { schemeId, frameId }: PassPlace,
  { pass }: SweepCell,
  kind: SweepKind,
): boolean => {
  const frame = schemes.find(({ id }) => id === schemeId)?.frames.find(({ id }) => id === frameId);
  const hasTime = frame !== undefined && (!setsDose(kind) || pass.off <= frame.seconds);
  return hasTime && lamps.some(({ id }) => id === pass.lampId);
};

/** The pass with a ratio's level and count; one that is walked walks as it does now, faster or slower. */
const withRatio = (now: Pass, { levelPercent, on, off }: Pass): Pass =>
  retimedPass({ ...now, levelPercent }, on, off) ?? now;

/** The pass as it is now, with only what the sweep changed taken from its cell. */
const withCell = (now: Pass, { waypoints, levelPercent, on, off, gels }: Pass, kind: SweepKind): Pass => {
  switch (kind) {
    case 'angles':
    case 'heights':
      return { ...now, waypoints };
    case 'distances':
      return { ...now, waypoints, levelPercent, on, off };
    case 'gels':
      return { ...now, gels };
    case 'ratios':
      return withRatio(now, { ...now, levelPercent, on, off });
  }
};

/**
 * The pass becomes the cell's in what the sweep changes; what was edited since stays. A cell that fits no longer is
 * refused.
 */
export const applyCell = (setup: Setup, place: PassPlace, cell: SweepCell, kind: SweepKind): Setup =>
  fits(setup, place, cell, kind)
    ? changePass(setup, place, (pass) => (pass.id === cell.pass.id ? withCell(pass, cell.pass, kind) : pass))
    : setup;

/** "Side · 3:00 · knee · 0.5 m": what is long is cut at the scheme's own name, so that its cells can be told apart. */
const nameOf = (schemeName: string, { column, row }: SweepCell): string => {
  const cellName = ` · ${[column, row].join(' · ')}`;
  return cutTo(cutTo(schemeName, longestName - cellName.length) + cellName, longestName);
};

/**
 * A copy of the scheme after it, with the cell's change and the cell's name. Where there is no room for another scheme, or
 * the cell fits no longer, nothing changes and the scheme's own id comes back.
 */
export const schemeOfCell = (
  setup: Setup,
  place: PassPlace,
  cell: SweepCell,
  kind: SweepKind,
): { readonly setup: Setup; readonly schemeId: string } => {
  const original = setup.schemes.find(({ id }) => id === place.schemeId);
  const copy = duplicateScheme(setup, place.schemeId);
  if (!original || copy.schemeId === place.schemeId || !fits(setup, place, cell, kind))
    return { setup, schemeId: place.schemeId };
  const named = renameScheme(copy.setup, copy.schemeId, nameOf(original.name, cell));
  return { setup: applyCell(named, { ...place, schemeId: copy.schemeId }, cell, kind), schemeId: copy.schemeId };
};
