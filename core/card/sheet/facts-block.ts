import { bearingText, coordinatesShort, dateText, hourText, lengthText, pacesText } from '../card-words.ts';
import type { FieldCard } from '../field-card.ts';
import { darkTexts, moonTexts } from '../sky-texts.ts';
import type { Measure, Shape, TextStyle } from './shapes.ts';
import { type Block, paragraphs, stacked, textLines } from './text-lines.ts';
import { capMm, type } from './type.ts';

/** Between one fact and the next, millimetres. */
const gap = 1.9;

interface Place {
  readonly x: number;
  readonly width: number;
  readonly measure: Measure;
}

/** What a fact says: its name, what one acts on large beside it, the rest. */
interface Fact {
  readonly name: string;
  readonly large?: string;
  readonly rest: readonly string[];
}

/** A fact with its name in front of its first line where that fits, over it where it does not. */
const fact =
  ({ name, large, rest }: Fact, { x, width, measure }: Place) =>
  (top: number): Block => {
    const [first = '', ...others] = large === undefined ? rest : [large, ...rest];
    const style = large === undefined ? type.body : type.numeral;
    const after = name === '' ? 0 : measure(name, type.strong) + measure('  ', type.body);
    const isBeside = after + measure(first, style) <= width;
    const lines = (texts: readonly string[], own: TextStyle) => (at: number) =>
      paragraphs(texts, own, { x, top: at, width, measure });
    const beside = (at: number): Block => {
      const head = textLines([first], style, x + after, at);
      const y = at + capMm(style);
      const named: Shape[] =
        name === '' ? [] : [{ kind: 'text', text: name, style: type.strong, anchor: 'start', x, y }];
      return { shapes: [...named, ...head.shapes], bottom: head.bottom };
    };
    const head = isBeside ? [beside] : [lines([name], type.strong), lines([first], style)];
    const block = stacked(top, [...head, lines(others, type.body)]);
    return { ...block, bottom: block.bottom + gap };
  };

/** A line to write on. */
const ruledLine = (x: number, y: number, width: number): Shape => ({
  kind: 'line',
  x1: x,
  y1: y,
  x2: x + width,
  y2: y,
  width: 0.2,
});

const permission =
  ({ permission: said }: FieldCard, place: Place) =>
  (top: number): Block => {
    const block = fact({ name: 'Permission', rest: [said] }, place)(top);
    if (said !== '') return block;
    const after = place.measure('Permission  ', type.strong);
    const line = ruledLine(place.x + after, top + capMm(type.body) + 0.8, place.width - after);
    return {
      shapes: [...block.shapes.filter((shape) => shape.kind !== 'text' || shape.text !== ''), line],
      bottom: block.bottom + 1,
    };
  };

/** When and where: date, moon, dark hours, permission, and what clocks and paces are counted from. */
export const factsBlock = (card: FieldCard, x: number, top: number, width: number, measure: Measure): Block => {
  const { sky, camera, mark, lengths } = card;
  const place: Place = { x, width, measure };
  const [dark = '', ...moonless] = darkTexts(sky);
  const looks = camera.bearingDegrees === null ? [] : [`looks ${bearingText(camera.bearingDegrees)}`];
  const stands = [
    lengthText(camera.distanceMetres, lengths),
    `${lengthText(camera.heightMetres, lengths)} high`,
    ...looks,
  ];
  const facts: readonly Fact[] = [
    {
      name: '',
      large: `${dateText(sky)}, ${hourText(sky)}`,
      rest: [`${sky.timeZone}, ${coordinatesShort(sky)}`],
    },
    { name: 'Moon', rest: moonTexts(sky) },
    { name: 'Dark', large: dark, rest: moonless },
  ];
  const after: readonly Fact[] = [
    {
      name: 'Mark',
      rest: [
        mark.subjectName ?? 'where the camera looks',
        `Clock and paces count from it. A pace is ${lengthText(card.paceMetres, lengths)}.`,
      ],
    },
    { name: 'Camera', large: `6 o’clock, ${pacesText(camera.paces)} paces`, rest: [stands.join(', ')] },
  ];
  return stacked(top, [
    ...facts.map((each) => fact(each, place)),
    permission(card, place),
    ...after.map((each) => fact(each, place)),
  ]);
};
