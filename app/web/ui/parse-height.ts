import { bodyHeights } from '../../../core/units/body-height.ts';
import { parseQuantity } from './parse-quantity.ts';

/** Metres from a length or from where on the body the lamp is held: "0.3", "1 ft", "shin", "overhead". */
export const parseHeight = (text: string): number | null =>
  bodyHeights.find(({ word }) => word === text.trim().toLowerCase())?.metres ?? parseQuantity(text, 'm');
