import { cardFontFromPackage } from '../../../app/cli/card-font-files.ts';
import type { CardRow } from '../../../core/card/card-row.ts';
import { cautionShorts } from '../../../core/card/caution-shorts.ts';
import type { CardCaution, CardFrame, FieldCard } from '../../../core/card/field-card.ts';
import { type PlanData, planData } from '../../../core/card/plan/plan-data.ts';
import { layOutCard } from '../../../core/card/sheet/lay-out-card.ts';
import type { Page } from '../../../core/card/sheet/shapes.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { atClock, cardOf, passFrom, stoneSetup } from '../../core/card/card-setups.ts';

export const font = cardFontFromPackage();

const setup = stoneSetup(passFrom('Key', 2.5, 6, 0.5, { gels: [{ name: '1/4 CTO' }] }));
const first = cardOf(setup);
export const plan: PlanData = planData(setup, reportScheme(setup, setup.schemes[0] as Scheme));

const row = first.rows[0] as CardRow;
const frame = first.frames[0] as CardFrame;

/** A card of so many places round the clock, one frame each `perFrame` of them. */
export const cardWith = (rows: number, rest: Partial<FieldCard> = {}, change: Partial<CardRow> = {}): FieldCard => {
  const places = Array.from({ length: rows }, (_, i): CardRow => {
    const [east, north] = atClock(1 + i * 1.3, 5 + i, 0.5);
    const start = { ...row.start, place: [east, north] as const };
    return { ...row, number: i + 1, passId: `p${i}`, start, way: [start.place], ...change };
  });
  return { ...first, rows: places, frames: [{ ...frame, rowNumbers: places.map(({ number }) => number) }], ...rest };
};

const long = 'Incomprehensibilities of standing stones ';
export const caution = (
  severity: CardCaution['severity'],
  rowNumber: number | null = null,
  code = 'unheard-of',
): CardCaution => ({
  code,
  severity,
  message: `Key: ${long.repeat(5)}.`,
  short: cautionShorts[code] ?? `Key: ${long.repeat(5)}.`,
  rowNumber,
  frameNumber: null,
});

/** Cards that are hard to set. */
export const hardCards = (): readonly (readonly [name: string, card: FieldCard])[] =>
  (['a4', 'letter'] as const).flatMap((paper) =>
    (['metres', 'feet'] as const).flatMap((lengths) => [
      [`one row, ${paper}, ${lengths}`, cardWith(1, { paper, lengths })] as const,
      [`no row, ${paper}, ${lengths}`, cardWith(0, { paper, lengths, cautions: [caution('note')] })] as const,
      [`eight rows, ${paper}, ${lengths}`, cardWith(8, { paper, lengths })] as const,
      [
        `thirty rows with long names and cautions, ${paper}, ${lengths}`,
        cardWith(
          30,
          {
            paper,
            lengths,
            setupName: long.repeat(3),
            schemeName: long.repeat(2),
            permission: long.repeat(4).slice(0, 160),
            cautions: [caution('danger'), ...[1, 2, 3, 9, 20].map((number) => caution('warning', number))],
            mark: { ...first.mark, subjectName: long },
          },
          { aimWord: long, gelWord: 'Full CTO + 1/4 plus green + cloth 2 stops', lampName: long, levelPercent: 0.015 },
        ),
      ] as const,
      [
        `moving lamps, ${paper}, ${lengths}`,
        cardWith(4, { paper, lengths }, { end: { ...row.start, clock: '11:55', paces: 120, heightWord: 'on a pole' } }),
      ] as const,
      [
        `twenty frames, ${paper}, ${lengths}`,
        cardWith(2, {
          paper,
          lengths,
          frames: Array.from({ length: 20 }, (_, f) => ({
            ...frame,
            number: f + 1,
            name: long,
            seconds: 1 / 8000,
            iso: 51200,
            kelvin: 12000,
            focusMetres: 12.5,
            delaySeconds: 180,
            gapSeconds: 30,
            count: 100,
            rowNumbers: f < 2 ? [f + 1] : [],
          })),
        }),
      ] as const,
    ]),
  );

export const pagesOf = (card: FieldCard, aspect: number | null = 1.5): Page[] =>
  layOutCard(card, { plan, aspect, measure: font.measure });
