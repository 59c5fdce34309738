import type { FieldCard } from '../field-card.ts';
import { cameraTable } from './camera-table.ts';
import { footBlock } from './foot-block.ts';
import { marginMm } from './paper.ts';
import { previewsBlock } from './previews-block.ts';
import { rowsTable } from './rows-table.ts';
import { rulesBlock } from './rules-block.ts';
import type { Measure } from './shapes.ts';
import type { Block } from './text-lines.ts';
import { capMm, lineMm, type } from './type.ts';

/** How closely a card is set. */
export interface Setting {
  /** Height of a row. */
  readonly rowMm: number;
  /** Whether names of passes have lines of their own. */
  readonly hasNameLine: boolean;
  /** Width of a picture. */
  readonly previewMm: number;
  readonly cautionLines: number;
}

/** From roomy to close: pictures shrink and cautions of less weight are left out before a card takes a second page. */
export const settings: readonly Setting[] = [
  { rowMm: 11, hasNameLine: true, previewMm: 55, cautionLines: 9 },
  { rowMm: 11, hasNameLine: true, previewMm: 55, cautionLines: 7 },
  { rowMm: 10.6, hasNameLine: true, previewMm: 48, cautionLines: 5 },
  { rowMm: 10.2, hasNameLine: false, previewMm: 42, cautionLines: 4 },
  { rowMm: 9.8, hasNameLine: false, previewMm: 36, cautionLines: 4 },
  { rowMm: 9.8, hasNameLine: false, previewMm: 30, cautionLines: 4 },
];

/** Between one part of the card and the next, and between pictures and words, millimetres. */
export const space = 3.2;
const gap = 4;

export interface LowerInput {
  readonly width: number;
  /** Width over height of the pictures; null = there are none. */
  readonly aspect: number | null;
  readonly measure: Measure;
}

/** Everything under the plan: rows, camera, stop rules and where not to stand, cautions, pictures. */
export const lowerPart = (
  card: FieldCard,
  { width, aspect, measure }: LowerInput,
  top: number,
  setting: Setting,
): Block => {
  const rows =
    card.rows.length > 0
      ? rowsTable(card, marginMm, top, width, measure, setting.rowMm, setting.hasNameLine)
      : { shapes: [], bottom: top - space };
  const camera = cameraTable(card, marginMm, rows.bottom + space, width, measure);
  const middle = camera.bottom + space;
  // an upright picture is as high as a wide one
  const wide = aspect === null ? 0 : setting.previewMm * Math.min(aspect / 1.5, 1);
  const rulesX = marginMm + (aspect === null ? 0 : 2 * wide + 2 * gap);
  const rules = rulesBlock(card, rulesX, middle, marginMm + width - rulesX, measure);
  const previews = aspect === null ? { shapes: [], bottom: middle } : previewsBlock(marginMm, middle, wide, aspect);
  const footTop = Math.max(previews.bottom, rules.bottom) + 1.6;
  const foot = footBlock(card, marginMm, footTop + 2, width, measure, setting.cautionLines);
  return {
    // the pictures come last, as one looks at them last
    shapes: [
      ...rows.shapes,
      ...camera.shapes,
      ...rules.shapes,
      { kind: 'line', x1: marginMm, y1: footTop, x2: marginMm + width, y2: footTop, width: 0.5 },
      ...foot.shapes,
      ...previews.shapes,
    ],
    bottom: foot.bottom - lineMm(type.body) + capMm(type.body) + 1,
  };
};
