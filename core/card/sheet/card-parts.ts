import type { CardRow } from '../card-row.ts';
import type { CardFrame, FieldCard } from '../field-card.ts';

/** Most places to stand of one card (trade practice: six to eight rows). */
const mostPlaces = 8;

interface Part {
  readonly rows: readonly CardRow[];
  readonly frames: readonly CardFrame[];
}

const placesOf = ({ rows }: Part): number => rows.reduce((sum, { end }) => sum + (end ? 2 : 1), 0);

/** A card with some of its rows and frames, and what is said of those alone. */
const partOf = (card: FieldCard, { rows, frames }: Part): FieldCard => {
  const rowNumbers = new Set(rows.map(({ number }) => number));
  const frameNumbers = new Set(frames.map(({ number }) => number));
  return {
    ...card,
    rows,
    frames,
    cautions: card.cautions.filter(({ rowNumber, frameNumber }) =>
      rowNumber !== null ? rowNumbers.has(rowNumber) : frameNumber === null || frameNumbers.has(frameNumber),
    ),
    sight: {
      ...card.sight,
      stays: card.sight.stays.filter(({ frameNumber }) => frameNumbers.has(frameNumber)),
      seenRows: card.sight.seenRows.filter(({ number }) => rowNumbers.has(number)),
    },
    focusStacks: card.focusStacks.filter((stack) => stack.frameNumbers.some((number) => frameNumbers.has(number))),
  };
};

/**
 * The parts of a card that a page each holds, in order: up to eight places to stand, and the frames that they belong to.
 * A frame with more passes than that goes on on the next page, where its line stands again. One row or one frame is never
 * too much.
 *
 * @param fits whether a card has room on its page
 */
export const cardParts = (card: FieldCard, fits: (card: FieldCard) => boolean): FieldCard[] => {
  const parts: Part[] = [{ rows: [], frames: [] }];
  const add = (frame: CardFrame, rows: readonly CardRow[]) => {
    const last = parts.at(-1) as Part;
    const isGoingOn = last.frames.at(-1) === frame;
    const longer: Part = {
      rows: [...last.rows, ...rows],
      frames: isGoingOn ? last.frames : [...last.frames, frame],
    };
    const hasRoom = last.frames.length === 0 || (placesOf(longer) <= mostPlaces && fits(partOf(card, longer)));
    if (hasRoom) parts[parts.length - 1] = longer;
    else parts.push({ rows, frames: [frame] });
  };
  for (const frame of card.frames) {
    const rows = card.rows.filter(({ number }) => frame.rowNumbers.includes(number));
    if (rows.length === 0) add(frame, []);
    for (const row of rows) add(frame, [row]);
  }
  return parts.map((part) => partOf(card, part));
};
