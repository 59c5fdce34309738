import type { CardRow } from './card-row.ts';
import type { CardFrame, FieldCard } from './field-card.ts';

/** A thing to do on the night: a pass, or a shutter opening (or like ones in a row) without a lamp. */
export type RunStep =
  | { readonly kind: 'pass'; readonly row: CardRow }
  | { readonly kind: 'frame'; readonly frame: CardFrame };

/** All there is to do for a card, in its order, so that whoever goes through it has every frame. */
export const runSteps = ({ frames, rows }: FieldCard): RunStep[] =>
  frames.flatMap((frame): RunStep[] => {
    const own = rows.filter(({ number }) => frame.rowNumbers.includes(number));
    return own.length > 0 ? own.map((row) => ({ kind: 'pass', row })) : [{ kind: 'frame', frame }];
  });
