import type { CardFrame, CardRow, FieldCard } from '../field-card.ts';
import { frameMm } from './camera-table.ts';
import type { Paper } from './paper.ts';
import { heightOfRow } from './rows-table.ts';

/** Most rows of one card (trade practice: six to eight). */
const mostRows = 8;
/** What rows and frame lines may take together, millimetres: the rest of the page has its own. */
const roomMm: Readonly<Record<Paper, number>> = { a4: 126, letter: 108 };

interface Part {
  readonly rows: CardRow[];
  readonly frames: CardFrame[];
}

const heightOf = ({ rows, frames }: Part): number =>
  rows.reduce((sum, row) => sum + heightOfRow(row), 0) + frames.length * frameMm;

const isFull = (part: Part, paper: Paper): boolean =>
  part.rows.reduce((sum, row) => sum + (row.end ? 2 : 1), 0) > mostRows || heightOf(part) > roomMm[paper];

/**
 * The parts of a card that a page each holds, in order: up to eight places to stand, and the frames that they belong to.
 * A frame with more passes than that goes on on the next page, where its line stands again.
 */
export const cardParts = (card: FieldCard): FieldCard[] => {
  const parts: Part[] = [{ rows: [], frames: [] }];
  const add = (frame: CardFrame, rows: readonly CardRow[]) => {
    const last = parts.at(-1) as Part;
    const isGoingOn = last.frames.at(-1) === frame;
    const longer = { rows: [...last.rows, ...rows], frames: isGoingOn ? last.frames : [...last.frames, frame] };
    const isEmpty = last.frames.length === 0;
    if (isEmpty || !isFull(longer, card.paper)) parts[parts.length - 1] = longer;
    else parts.push({ rows: [...rows], frames: [frame] });
  };
  for (const frame of card.frames) {
    const rows = card.rows.filter(({ number }) => frame.rowNumbers.includes(number));
    if (rows.length === 0) add(frame, []);
    for (const row of rows) add(frame, [row]);
  }
  return parts.map(({ rows, frames }) => {
    const numbers = new Set(rows.map(({ number }) => number));
    const isHere = ({ rowNumber }: { rowNumber: number | null }) => rowNumber === null || numbers.has(rowNumber);
    return {
      ...card,
      rows,
      frames,
      cautions: card.cautions.filter(isHere),
      sight: {
        ...card.sight,
        stays: card.sight.stays.filter(({ frameNumber }) => frames.some(({ number }) => number === frameNumber)),
        seenRows: card.sight.seenRows.filter(({ number }) => numbers.has(number)),
      },
      focusStacks: card.focusStacks.filter(({ frameNumbers }) =>
        frameNumbers.some((number) => frames.some((frame) => frame.number === number)),
      ),
    };
  });
};
