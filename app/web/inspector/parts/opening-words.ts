import type { Opening, PartOf } from '../../../../core/setup/schema/setup.ts';
import { partProblem } from '../../state/edits/part-problem.ts';

export type OpeningKind = 'doorway' | 'window' | 'archway';
type Wall = PartOf<'wall'>;

/** What a new opening of each kind starts as, in the middle of the wall. */
const firstOpenings: Readonly<Record<OpeningKind, Opening>> = {
  doorway: { acrossMetres: 0, sillMetres: 0, widthMetres: 0.9, heightMetres: 2, head: 'flat' },
  window: { acrossMetres: 0, sillMetres: 1, widthMetres: 0.8, heightMetres: 0.9, head: 'flat' },
  archway: { acrossMetres: 0, sillMetres: 0, widthMetres: 1.4, heightMetres: 2.2, head: 'round' },
};

export const openingKinds = Object.keys(firstOpenings) as readonly OpeningKind[];

/** What an opening is called. */
export const openingWord = ({ sillMetres, head }: Opening): string => {
  if (sillMetres > 0) return head === 'flat' ? 'Window' : 'Arched window';
  return head === 'flat' ? 'Doorway' : 'Archway';
};

/**
 * The wall with another opening, as near its middle as there is room.
 *
 * @returns null where there is none
 */
export const withOpening = (wall: Wall, kind: OpeningKind): Wall | null => {
  if (wall.openings.length >= 24) return null;
  const first = firstOpenings[kind];
  const tried = Math.ceil(wall.widthMetres / 2 / 0.1);
  for (let step = 0; step <= tried; step++)
    for (const side of step === 0 ? [1] : [1, -1]) {
      const acrossMetres = Math.round(side * step * 10) / 100 + 0;
      const next: Wall = { ...wall, openings: [...wall.openings, { ...first, acrossMetres }] };
      if (partProblem(next) === null) return next;
    }
  return null;
};

/** "0.9 × 2 m": what a new one needs. */
export const neededRoom = (kind: OpeningKind): string => {
  const { widthMetres, heightMetres, sillMetres } = firstOpenings[kind];
  const size = `${widthMetres} × ${heightMetres} m`;
  return sillMetres > 0 ? `${size}, ${sillMetres} m over the foot` : size;
};
