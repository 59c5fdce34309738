import type { FieldCard } from '../field-card.ts';
import { drawPlan } from '../plan/draw-plan.ts';
import { legend } from '../plan/legend.ts';
import type { PlanData } from '../plan/plan-data.ts';
import { stroke } from '../plan/strokes.ts';
import { cameraTable } from './camera-table.ts';
import { cardParts } from './card-parts.ts';
import { factsBlock } from './facts-block.ts';
import { footBlock } from './foot-block.ts';
import { marginMm, paperSizes } from './paper.ts';
import { previewMm, previewsBlock, previewWidth } from './previews-block.ts';
import { heightOfRow, rowMm, rowsTable } from './rows-table.ts';
import { rulesBlock } from './rules-block.ts';
import type { Measure, Page, Shape } from './shapes.ts';
import { capMm, lineMm, type } from './type.ts';
import { shortened } from './wrap-text.ts';

/** Width of the facts beside the plan, and the least of the rules beside the pictures, millimetres. */
const factsMm = 62;
const rulesMm = 72;
const gap = 4;
/** Between one part of the card and the next. */
const space = 3.2;
/** The plan is as high as the page lets it, within these. */
const planMm = { least: 74, most: 165 };
/** Rows are as high as the page lets them, up to this. */
const highestRowMm = 14;
/** Most lines of cautions, and the narrowest preview, tried in turn until all fits. */
const tries = [
  { cautionLines: 10, leastPreviewMm: 55 },
  { cautionLines: 7, leastPreviewMm: 48 },
  { cautionLines: 5, leastPreviewMm: 40 },
  { cautionLines: 3, leastPreviewMm: 30 },
  { cautionLines: 1, leastPreviewMm: 20 },
] as const;

interface CardInput {
  readonly plan: PlanData;
  /** Width over height of the pictures; null = there are none. */
  readonly aspect: number | null;
  readonly measure: Measure;
}

const rectangle = (x: number, y: number, width: number, height: number, weight: number): Shape => ({
  kind: 'path',
  path: `M${x} ${y}L${x + width} ${y}L${x + width} ${y + height}L${x} ${y + height}Z`,
  width: weight,
  fill: 'none',
});
const rule = (y: number, width: number): Shape => ({
  kind: 'line',
  x1: marginMm,
  y1: y,
  x2: marginMm + width,
  y2: y,
  width: 0.5,
});

/** Title and scheme, and which card of how many it is. */
const header = (card: FieldCard, of: string, width: number, measure: Measure) => {
  const ofWidth = of === '' ? 0 : measure(of, type.strong) + gap;
  const title = shortened(card.setupName, type.title, width - ofWidth, measure);
  const titleEnd = marginMm + measure(title, type.title) + gap;
  const right = marginMm + width;
  const y = marginMm + capMm(type.title);
  const scheme = shortened(card.schemeName, type.numeral, right - ofWidth - titleEnd, measure);
  const shapes: Shape[] = [
    { kind: 'text', text: title, style: type.title, anchor: 'start', x: marginMm, y },
    ...(right - ofWidth - titleEnd > 15
      ? [{ kind: 'text', text: scheme, style: type.numeral, anchor: 'start', x: titleEnd, y } as const]
      : []),
    ...(of === '' ? [] : [{ kind: 'text', text: of, style: type.strong, anchor: 'end', x: right, y } as const]),
    rule(y + 2.6, width),
  ];
  return { shapes, bottom: y + 2.6 + space };
};

/** Everything under the plan, told how much room there is; from its own top edge. */
const lowerPart = (
  card: FieldCard,
  { aspect, measure }: CardInput,
  top: number,
  width: number,
  each: number,
  { cautionLines, leastPreviewMm }: (typeof tries)[number],
) => {
  const rows =
    card.rows.length > 0 ? rowsTable(card, marginMm, top, width, measure, each) : { shapes: [], bottom: top - space };
  const camera = cameraTable(card, marginMm, rows.bottom + space, width, measure);
  const middle = camera.bottom + space;
  const picturesMm = width - rulesMm - gap;
  const most = aspect === null ? 0 : Math.min(picturesMm / 2 - gap / 2, previewMm);
  const rulesAt = (wide: number) => {
    const x = marginMm + (wide > 0 ? 2 * wide + 2 * gap : 0);
    return rulesBlock(card, x, middle, marginMm + width - x, measure);
  };
  // the pictures are as high as the words beside them, within reason
  const wide =
    aspect === null ? 0 : Math.min(Math.max(previewWidth(rulesAt(most).bottom - middle, aspect), leastPreviewMm), most);
  const rules = rulesAt(wide);
  const previews = aspect === null ? { shapes: [], bottom: middle } : previewsBlock(marginMm, middle, wide, aspect);
  const footTop = Math.max(previews.bottom, rules.bottom) + 1.6;
  const foot = footBlock(card, marginMm, footTop + 2, width, measure, cautionLines);
  // the pictures come last, as one looks at them last
  const shapes = [
    ...rows.shapes,
    ...camera.shapes,
    ...rules.shapes,
    rule(footTop, width),
    ...foot.shapes,
    ...previews.shapes,
  ];
  return { shapes, bottom: foot.bottom - lineMm(type.body) + capMm(type.body) + 1 };
};

const pageOf = (card: FieldCard, of: string, input: CardInput): Page => {
  const { widthMm, heightMm } = paperSizes[card.paper];
  const width = widthMm - 2 * marginMm;
  const end = heightMm - marginMm;
  const head = header(card, of, width, input.measure);
  const facts = factsBlock(card, marginMm, head.bottom, factsMm, input.measure);
  const least = Math.max(planMm.least, facts.bottom - head.bottom);
  const heightWith = (choice: (typeof tries)[number], each: number) =>
    lowerPart(card, input, 0, width, each, choice).bottom;
  const room = end - head.bottom - least - space;
  const choice =
    tries.find((each) => heightWith(each, rowMm) <= room) ?? (tries[tries.length - 1] as (typeof tries)[number]);
  const places = card.rows.reduce((sum, row) => sum + heightOfRow(row, 1), 0);
  const spare = Math.max(room - heightWith(choice, rowMm), 0);
  const each =
    places > 0
      ? Math.min(highestRowMm, rowMm + Math.max(spare - (planMm.most - least) * 0.7, spare * 0.25) / places)
      : rowMm;
  const planHeight = Math.min(planMm.most, least + room - heightWith(choice, each));
  const box = { x: marginMm + factsMm + gap, y: head.bottom, width: width - factsMm - gap, height: planHeight };
  const lower = lowerPart(card, input, head.bottom + planHeight + space, width, each, choice);
  return {
    widthMm,
    heightMm,
    shapes: [
      ...head.shapes,
      ...facts.shapes,
      ...legend(card, input.plan, marginMm, facts.bottom, head.bottom + planHeight).shapes,
      rectangle(box.x, box.y, box.width, box.height, stroke),
      ...drawPlan(card, input.plan, box),
      ...lower.shapes,
    ],
  };
};

/** The card as pages of its paper, one as a rule; a scheme of many passes or frames takes more, each a whole card. */
export const layOutCard = (card: FieldCard, input: CardInput): Page[] => {
  const parts = cardParts(card);
  return parts.map((part, p) => pageOf(part, parts.length > 1 ? `Card ${p + 1} of ${parts.length}` : '', input));
};
