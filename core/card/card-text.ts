import type { CardRow, CardStand } from './card-row.ts';
import {
  apertureText,
  bearingText,
  coordinatesShort,
  countText,
  dateText,
  focusText,
  hourText,
  lengthText,
  levelText,
  onText,
  pacesText,
  roundText,
  shutterText,
} from './card-words.ts';
import { cautionWord } from './caution-lines.ts';
import type { CardCaution, CardFrame, FieldCard } from './field-card.ts';
import { sightTexts } from './sight-texts.ts';
import { darkTexts, moonTexts } from './sky-texts.ts';

const standText = ({ clock, paces, distanceMetres, heightWord, heightMetres, ...stand }: CardStand, card: FieldCard) =>
  `${clock} (${roundText(stand)}), ${pacesText(paces)} paces (${lengthText(distanceMetres, card.lengths)}), ${heightWord} (${lengthText(heightMetres, card.lengths)})`;

const rowLines = (row: CardRow, card: FieldCard): string[] => [
  `${String(row.number).padStart(2)}. [ ] ${row.name}`,
  `      ${standText(row.start, card)}${row.end ? `, to ${standText(row.end, card)}` : ''}`,
  `      aim: ${row.aimWord} · ${row.lampName} ${levelText(row.levelPercent)} · gel: ${row.gelWord}`,
  `      COUNT ${countText(row)}${row.staysOn ? '' : ' s'}, ${onText(row)} · strokes ${row.strokes} · frame ${row.frameNumber}`,
  '      what I did: ______________________________',
];

const frameLine = (frame: CardFrame, { lengths }: FieldCard): string =>
  [
    `  ${frame.count > 1 ? `${frame.number}–${frame.number + frame.count - 1}` : frame.number}. ${frame.name}: ${Number(frame.focalLengthMm.toFixed(1))} mm`,
    `f/${apertureText(frame)}`,
    `${shutterText(frame)} s`,
    `ISO ${Math.round(frame.iso)}`,
    `${Math.round(frame.kelvin)} K`,
    `focus ${focusText(frame.focusMetres, lengths)}`,
    `delay ${frame.delaySeconds} s`,
    ...(frame.gapSeconds === null ? [] : [`gap ${frame.gapSeconds} s`]),
    `count ${frame.count}`,
  ].join(', ');

const cautionLine = (caution: CardCaution): string => {
  const { message, rowNumber, frameNumber } = caution;
  const where = rowNumber !== null ? `row ${rowNumber}: ` : frameNumber !== null ? `frame ${frameNumber}: ` : '';
  const word = cautionWord(caution);
  return `  ${word === '' ? '' : `${word} `}${where}${message}`;
};

const focusLines = ({ focusStacks, lengths }: FieldCard): string[] =>
  focusStacks.map(
    ({ frameNumbers, focusMetres }) =>
      `  Focus steps, frames ${frameNumbers.join(', ')}: ${focusMetres.map((metres) => focusText(metres, lengths)).join(', ')}. Turn the ring, touch nothing else.`,
  );

/** The card as plain text, in the order of the printed one. */
export const cardText = (card: FieldCard): string => {
  const { sky, camera, mark, lengths } = card;
  const looks = camera.bearingDegrees === null ? '' : `, looks ${bearingText(camera.bearingDegrees)}`;
  const lines = [
    `${card.setupName} · ${card.schemeName}`,
    `${dateText(sky)}, ${hourText(sky)} ${sky.timeZone} · ${coordinatesShort(sky)}`,
    `Moon: ${moonTexts(sky).join('; ')}`,
    `Dark: ${darkTexts(sky).join('; ')}`,
    `Permission: ${card.permission || '______________________________'}`,
    '',
    `Mark: ${mark.subjectName ?? 'where the camera looks'}. Clock and paces are counted from it, the camera at six; a pace is ${lengthText(card.paceMetres, lengths)}.`,
    `Camera: ${pacesText(camera.paces)} paces (${lengthText(camera.distanceMetres, lengths)}) from the mark, ${lengthText(camera.heightMetres, lengths)} high${looks}`,
    '',
    'PASSES',
    ...(card.rows.length > 0 ? card.rows.flatMap((row) => rowLines(row, card)) : ['  none: no lamp is used']),
    '',
    'CAMERA',
    ...card.frames.map((frame) => frameLine(frame, card)),
    ...focusLines(card),
    '',
    'IF IT CAME OUT',
    ...card.stopRules.map(({ fault, remedy }) => `  ${fault}: ${remedy}.`),
    '',
    'WHERE NOT TO STAND',
    ...sightTexts(card.sight).map((text) => `  ${text}`),
    '',
    ...(card.cautions.length > 0 ? ['CAUTIONS', ...card.cautions.map(cautionLine), ''] : []),
    'ALWAYS',
    ...card.safety.map((text) => `  ${text}`),
  ];
  return `${lines.join('\n')}\n`;
};
