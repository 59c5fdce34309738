import { bearingText, coordinatesShort, dateText, hourText, lengthText, pacesText } from '../card-words.ts';
import type { FieldCard } from '../field-card.ts';
import { darkTexts, moonTexts } from '../sky-texts.ts';
import type { Measure, Shape, TextStyle } from './shapes.ts';
import { type Block, paragraphs, stacked } from './text-lines.ts';
import { type } from './type.ts';

/** Between one fact and the next, millimetres. */
const gap = 1.9;

interface Place {
  readonly x: number;
  readonly width: number;
  readonly measure: Measure;
}

/** A fact: its name, what one acts on large, the rest under it. */
const fact =
  (name: string, large: readonly string[], rest: readonly string[], { x, width, measure }: Place) =>
  (top: number): Block => {
    const lines = (texts: readonly string[], style: TextStyle) => (at: number) =>
      paragraphs(texts, style, { x, top: at, width, measure });
    const block = stacked(top, [lines([name], type.strong), lines(large, type.numeral), lines(rest, type.body)]);
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
    if (said !== '') return fact('Permission', [], [said], place)(top);
    const name = fact('Permission', [], [], place)(top);
    const bottom = name.bottom + 5.2;
    return { shapes: [...name.shapes, ruledLine(place.x, bottom - 1.2, place.width)], bottom: bottom + gap };
  };

/** When and where: date, moon, dark hours, permission, and what clocks and paces are counted from. */
export const factsBlock = (card: FieldCard, x: number, top: number, width: number, measure: Measure): Block => {
  const { sky, camera, mark, lengths } = card;
  const place: Place = { x, width, measure };
  const [dark = '', ...moonless] = darkTexts(sky);
  const looks = camera.bearingDegrees === null ? [] : [`looks ${bearingText(camera.bearingDegrees)}`];
  return stacked(top, [
    fact('Date', [`${dateText(sky)}, ${hourText(sky)}`], [`${sky.timeZone}, ${coordinatesShort(sky)}`], place),
    fact('Moon', [], moonTexts(sky), place),
    fact('Dark', [dark], moonless, place),
    permission(card, place),
    fact(
      `Mark: ${mark.subjectName ?? 'where the camera looks'}`,
      [],
      [`Clock and paces count from it. A pace is ${lengthText(card.paceMetres, lengths)}.`],
      place,
    ),
    fact(
      'Camera at 6 o’clock',
      [`${pacesText(camera.paces)} paces`],
      [
        [lengthText(camera.distanceMetres, lengths), `${lengthText(camera.heightMetres, lengths)} high`, ...looks].join(
          ', ',
        ),
      ],
      place,
    ),
  ]);
};
