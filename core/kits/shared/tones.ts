import { toned } from '../../setup/recolour.ts';
import type { Finish } from '../../setup/schema/setup.ts';
import type { FinishDraft } from '../kit.ts';

/** A few tones of a finish to pick from, so that stones differ and a document does not hold hundreds of finishes. */
export const tonesOf = (finish: Finish, spread: number, count = 5): readonly FinishDraft[] =>
  Array.from({ length: count }, (_, i) => toned(finish, 1 + spread * ((2 * i) / (count - 1) - 1)));

export const pick = <T>(random: () => number, items: readonly T[]): T =>
  items[Math.floor(random() * items.length)] as T;
