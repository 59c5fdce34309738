import type { Finish } from '../../setup/schema/setup.ts';
import type { FinishDraft } from '../kit.ts';

/** The same finish lighter or darker; the reflectance is rounded to thousandths. */
export const toned = (finish: Finish, factor: number): FinishDraft => {
  const tone = (value: number) => Math.min(Math.round(value * factor * 1000) / 1000, 1 - finish.transmittance);
  const { reflectance } = finish;
  return {
    ...finish,
    reflectance:
      typeof reflectance === 'number' ? tone(reflectance) : ([...reflectance.map(tone)] as [number, number, number]),
  };
};

/** A few tones of a finish to pick from, so that stones differ and a document does not hold hundreds of finishes. */
export const tonesOf = (finish: Finish, spread: number, count = 5): readonly FinishDraft[] =>
  Array.from({ length: count }, (_, i) => toned(finish, 1 + spread * ((2 * i) / (count - 1) - 1)));

export const pick = <T>(random: () => number, items: readonly T[]): T =>
  items[Math.floor(random() * items.length)] as T;
