import type { FieldCard } from '../field-card.ts';
import type { Shape } from '../sheet/shapes.ts';
import type { Block } from '../sheet/text-lines.ts';
import { lineMm, type } from '../sheet/type.ts';
import type { PlanData } from './plan-data.ts';
import { arrowHead, crossAt, hatchOfCircle, stroke, walkDash, wayDash } from './strokes.ts';

/** What a sign of the plan looks like, round a place left of its words. */
interface Sign {
  readonly words: string;
  readonly draw: (x: number, y: number) => Shape[];
}

const across =
  (dash: readonly [number, number]) =>
  (x: number, y: number): Shape[] => [{ kind: 'line', x1: x, y1: y, x2: x + 8, y2: y, width: stroke, dash }];

/** Words that stand in the rows, and what they mean. */
const onWords = (x: number, y: number): Shape[] => [
  { kind: 'text', text: 'at 1 s', style: type.body, anchor: 'start', x: x - 0.6, y: y + 1.3 },
];

const signsOf = ({ rows }: FieldCard, { walks, hazards }: PlanData): Sign[] => [
  { words: 'mark', draw: (x, y) => [crossAt([x + 4, y], 1.7)] },
  {
    words: 'edges of the picture',
    draw: (x, y) => [
      {
        kind: 'path',
        path: `M${x + 0.6} ${y - 1.6}L${x + 4} ${y + 1.6}L${x + 7.4} ${y - 1.6}`,
        width: stroke,
        fill: 'none',
      },
    ],
  },
  ...(rows.length > 0
    ? [
        {
          words: 'where the lamp points',
          draw: (x: number, y: number): Shape[] => [
            { kind: 'line', x1: x, y1: y, x2: x + 7, y2: y, width: stroke },
            arrowHead([x + 8, y], [1, 0]),
          ],
        },
        { words: 'lamp on that long after', draw: onWords },
        { words: 'the shutter opens', draw: () => [] },
      ]
    : []),
  ...(walks.length > 0 ? [{ words: 'on foot', draw: across(walkDash) }] : []),
  ...(rows.some(({ end }) => end) ? [{ words: 'way of a moving lamp', draw: across(wayDash) }] : []),
  ...(hazards.length > 0
    ? [
        {
          words: 'hazard: keep off',
          draw: (x: number, y: number): Shape[] => [
            { kind: 'circle', x: x + 4, y, radius: 1.9, width: stroke, fill: 'none' },
            {
              kind: 'path',
              path: hatchOfCircle([x + 4, y], 1.9, { x, y: y - 4, width: 8, height: 8 }, 1.3),
              width: stroke,
              fill: 'none',
            },
          ],
        },
      ]
    : []),
];

/** What the plan's signs mean, those that occur, as many as there is room for, with their last line at the plan's foot. */
export const legend = (card: FieldCard, data: PlanData, x: number, least: number, bottom: number): Block => {
  const line = lineMm(type.body);
  const signs = signsOf(card, data).slice(0, Math.max(Math.floor((bottom - least) / line), 0));
  const top = bottom - signs.length * line;
  return {
    shapes: signs.flatMap(({ words, draw }, i): Shape[] => {
      const base = top + (i + 1) * line - 0.4;
      return [
        ...draw(x, base - 1.3),
        { kind: 'text', text: words, style: type.body, anchor: 'start', x: x + 12, y: base },
      ];
    }),
    bottom,
  };
};
