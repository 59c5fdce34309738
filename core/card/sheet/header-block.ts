import type { FieldCard } from '../field-card.ts';
import { marginMm } from './paper.ts';
import type { Measure, Shape } from './shapes.ts';
import type { Block } from './text-lines.ts';
import { capMm, type } from './type.ts';
import { shortened } from './wrap-text.ts';

const gap = 4;
/** Share of the line that a long title leaves to the name of the scheme. */
const schemeShare = 0.35;

/** Title and scheme, and which card of how many it is, over a rule. */
export const headerBlock = (card: FieldCard, of: string, width: number, measure: Measure): Block => {
  const ofMm = of === '' ? 0 : measure(of, type.strong) + gap;
  const room = width - ofMm - gap;
  const schemeMm = Math.min(measure(card.schemeName, type.numeral), room * schemeShare);
  const title = shortened(card.setupName, type.title, room - schemeMm, measure);
  const titleEnd = marginMm + measure(title, type.title) + gap;
  const scheme = shortened(card.schemeName, type.numeral, marginMm + width - ofMm - titleEnd + 0.01, measure);
  const y = marginMm + capMm(type.title);
  const bottom = y + 2.6;
  const shapes: Shape[] = [
    { kind: 'text', text: title, style: type.title, anchor: 'start', x: marginMm, y },
    { kind: 'text', text: scheme, style: type.numeral, anchor: 'start', x: titleEnd, y },
    ...(of === ''
      ? []
      : [{ kind: 'text', text: of, style: type.strong, anchor: 'end', x: marginMm + width, y } as const]),
    { kind: 'line', x1: marginMm, y1: bottom, x2: marginMm + width, y2: bottom, width: 0.5 },
  ];
  return { shapes, bottom };
};
