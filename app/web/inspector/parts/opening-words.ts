import type { Opening, PartOf } from '../../../../core/setup/schema/setup.ts';
import { partProblem } from '../../state/edits/part-problem.ts';
import { worded } from '../../ui/lengths.ts';

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
 * Where an opening so wide might go, in tenths of a metre from the middle of the wall, the nearest first and the east
 * first: the middle itself, and past either side of each opening that is there. The nearest free place is one of these.
 */
const tenthsToTry = ({ openings, widthMetres }: Wall, wideMetres: number): number[] => {
  const most = 5 * (widthMetres - wideMetres);
  const besides = openings.flatMap((other) => {
    const apart = 5 * (other.widthMetres + wideMetres);
    const [west, east] = [Math.floor(10 * other.acrossMetres - apart), Math.ceil(10 * other.acrossMetres + apart)];
    // the next tenth too: the document wants a little wall between
    return [west - 1, west, east, east + 1];
  });
  return [...new Set([0, ...besides])]
    .filter((tenths) => Math.abs(tenths) <= most)
    .sort((a, b) => Math.abs(a) - Math.abs(b) || b - a);
};

/**
 * The wall with another opening, as near its middle as there is room.
 *
 * @returns null where there is none
 */
export const withOpening = (wall: Wall, kind: OpeningKind): Wall | null => {
  if (wall.openings.length >= 24) return null;
  const first = firstOpenings[kind];
  // what does not fit in the middle of the bare wall, where it is highest, fits nowhere
  if (partProblem({ ...wall, openings: [first] })) return null;
  for (const tenths of tenthsToTry(wall, first.widthMetres)) {
    const next: Wall = { ...wall, openings: [...wall.openings, { ...first, acrossMetres: tenths / 10 }] };
    if (partProblem(next) === null) return next;
  }
  return null;
};

/** "0.9 × 2 m": what a new one needs. */
export const neededRoom = (kind: OpeningKind): string => {
  const { widthMetres, heightMetres, sillMetres } = firstOpenings[kind];
  const size = `${widthMetres} × ${heightMetres} m`;
  return worded(sillMetres > 0 ? `${size}, ${sillMetres} m over the foot` : size);
};
