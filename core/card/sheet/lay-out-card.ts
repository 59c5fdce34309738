import type { FieldCard } from '../field-card.ts';
import { drawPlan } from '../plan/draw-plan.ts';
import { legend } from '../plan/legend.ts';
import type { PlanData } from '../plan/plan-data.ts';
import { stroke } from '../plan/strokes.ts';
import { cardParts } from './card-parts.ts';
import { factsBlock } from './facts-block.ts';
import { headerBlock } from './header-block.ts';
import { type LowerInput, lowerPart, type Setting, settings, space } from './lower-part.ts';
import { marginMm, paperSizes } from './paper.ts';
import { heightOfRow } from './rows-table.ts';
import type { Measure, Page, Shape } from './shapes.ts';

/** Width of the facts beside the plan, and from them to it, millimetres. */
const factsMm = 62;
const gap = 4;
/** The plan is as high as the page lets it, within these. */
const planMm = { least: 74, most: 165 };
/** Rows are as high as the page lets them, up to this: room for a pencil. */
const highestRowMm = 14;
/** Share of spare height that goes to the rows rather than to the plan. */
const rowsShare = 0.25;

interface CardInput {
  readonly plan: PlanData;
  /** Width over height of the pictures; null = there are none. */
  readonly aspect: number | null;
  readonly measure: Measure;
}

const border = (x: number, y: number, width: number, height: number): Shape => ({
  kind: 'path',
  path: `M${x} ${y}L${x + width} ${y}L${x + width} ${y + height}L${x} ${y + height}Z`,
  width: stroke,
  fill: 'none',
});

/** A page measured: what stands over the plan, and what the rest has. */
const measuredPage = (card: FieldCard, of: string, { aspect, measure }: CardInput) => {
  const { widthMm, heightMm } = paperSizes[card.paper];
  const width = widthMm - 2 * marginMm;
  const header = headerBlock(card, of, width, measure);
  const top = header.bottom + space;
  const facts = factsBlock(card, marginMm, top, factsMm, measure);
  const leastPlan = Math.max(planMm.least, facts.bottom - top);
  const lower: LowerInput = { width, aspect, measure };
  /** Height that is left over when a setting is taken; negative = it does not fit. */
  const spareWith = (setting: Setting) =>
    heightMm - marginMm - top - leastPlan - space - lowerPart(card, lower, 0, setting).bottom;
  return { widthMm, heightMm, width, header, top, facts, leastPlan, lower, spareWith };
};

const closest = settings[settings.length - 1] as Setting;

const pageOf = (card: FieldCard, of: string, input: CardInput): Page => {
  const { widthMm, heightMm, width, header, top, facts, leastPlan, lower, spareWith } = measuredPage(card, of, input);
  const setting = settings.find((each) => spareWith(each) >= 0) ?? closest;
  const spare = Math.max(spareWith(setting), 0);
  const places = card.rows.reduce((sum, row) => sum + heightOfRow(row, 1), 0);
  const forRows = Math.max(spare * rowsShare, spare - (planMm.most - leastPlan));
  const rowMm = places > 0 ? Math.min(setting.rowMm + forRows / places, highestRowMm) : setting.rowMm;
  const grown = Math.max(rowMm, setting.rowMm);
  const planHeight = Math.min(planMm.most, leastPlan + spare - (grown - setting.rowMm) * places);
  const box = { x: marginMm + factsMm + gap, y: top, width: width - factsMm - gap, height: planHeight };
  return {
    widthMm,
    heightMm,
    shapes: [
      ...header.shapes,
      ...facts.shapes,
      ...legend(card, input.plan, marginMm, facts.bottom, top + planHeight).shapes,
      border(box.x, box.y, box.width, box.height),
      ...drawPlan(card, input.plan, box),
      ...lowerPart(card, lower, top + planHeight + space, { ...setting, rowMm: grown }).shapes,
    ],
  };
};

/** The card as pages of its paper, one as a rule; a scheme of many passes or frames takes more, each a whole card. */
export const layOutCard = (card: FieldCard, input: CardInput): Page[] => {
  const fits = (part: FieldCard) => measuredPage(part, '', input).spareWith(closest) >= 0;
  const parts = cardParts(card, fits);
  return parts.map((part, p) => pageOf(part, parts.length > 1 ? `Card ${p + 1} of ${parts.length}` : '', input));
};
