import { footMetres } from '../../../core/units/feet.ts';
import { parseQuantity } from '../ui/parse-quantity.ts';

/** Feet that a person typed: "2.5", "2 ft 6 in", "2'6", "30 in", "0.76 m"; null when it can’t be read. */
export const parseFeet = (text: string): number | null => {
  const isBare = /^\s*\d*[.,]?\d+\s*$/.test(text);
  const metres = parseQuantity(isBare ? `${text} ft` : text, 'm');
  return metres === null ? null : metres / footMetres;
};
