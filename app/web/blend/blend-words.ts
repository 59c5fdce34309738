import type { Blend, NamedEntry } from '../../../core/setup/blend-entries.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import { signed } from '../ui/words.ts';

/** How frames become one picture, and what that does. */
export const modeWords: readonly (readonly [mode: Blend['mode'], name: string, says: string])[] = [
  ['lighten', 'Lighten', 'Keeps the brighter of each channel: each lamp stays as bright as in its own frame.'],
  ['add', 'Add', 'As if it were one long exposure: all light adds up, that of the sky too.'],
  ['average', 'Average', 'The mean of the frames, with less noise; what is lit in one frame only gets weaker.'],
];

/** A strength in stops; nought of it is nothing at all. */
export const weightWords = (weight: number): string =>
  weight === 0 ? 'no light' : `${signed(Math.log2(weight))} stops`;

const places = [
  ['everything', 'everywhere'],
  ['sky', 'in the sky'],
  ['land', 'on the land'],
  ['ground', 'on the ground alone'],
] as const;

const subjectValue = (id: string) => `subject/${id}`;

/** Where a frame may count, as a list to choose from. */
export const whereOptions = (subjects: readonly Subject[]): (readonly [value: string, text: string])[] => [
  ...places,
  ...subjects.map(({ id, name }) => [subjectValue(id), `on ${name}`] as const),
];

/** Which of them an entry has. */
export const whereValue = ({ where, subjectId }: NamedEntry): string =>
  where === 'subject' ? subjectValue(subjectId ?? '') : where;

/** What choosing one of them makes of an entry. */
export const whereChosen = (value: string): Pick<NamedEntry, 'where' | 'subjectId'> => {
  const place = places.find(([where]) => where === value);
  return place
    ? { where: place[0], subjectId: null }
    : { where: 'subject', subjectId: value.slice(subjectValue('').length) };
};
