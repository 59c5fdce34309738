import type { z } from 'zod';
import { seededRandom } from '../geometry/random.ts';
import { recolouredParts } from '../setup/recolour.ts';
import { finish } from '../setup/schema/fields.ts';
import type { part } from '../setup/schema/part.ts';
import type { Finish, Subject } from '../setup/schema/setup.ts';
import { subject } from '../setup/schema/subject.ts';

/** A number that a kit is made from. */
export interface KitField {
  readonly key: string;
  readonly label: string;
  readonly unit: 'm' | '°' | '';
  readonly min: number;
  readonly max: number;
  readonly initial: number;
  /** What arrow keys change it by; whole numbers where it is 1 and there is no unit. */
  readonly step: number;
  /** Words to choose from; the value is the place in this list, from 0. */
  readonly choices?: readonly string[];
}

export type KitValues = Readonly<Record<string, number>>;
/** A part as a document may leave it: what is not said takes the schema's default. */
export type PartDraft = z.input<typeof part>;
export type FinishDraft = z.input<typeof finish>;

/** What a kit gives: ordinary parts round the subject's own origin, front to the south (toward a camera in the south). */
export interface KitParts {
  readonly finish: FinishDraft;
  readonly parts: readonly PartDraft[];
}

/** A kind of subject that is made from a few numbers and a seed. */
export interface Kit {
  /** Identifier kept in the document. */
  readonly name: string;
  readonly label: string;
  /** What it is, in a line. */
  readonly says: string;
  readonly fields: readonly KitField[];
  /**
   * Makes the parts.
   *
   * @param values one number for each field, within its range
   * @param random numbers in [0, 1), the same for the same seed
   */
  make(values: KitValues, random: () => number): KitParts;
}

/** The numbers that a kit starts with. */
export const initialValues = ({ fields }: Kit): KitValues =>
  Object.fromEntries(fields.map(({ key, initial }) => [key, initial]));

/** Numbers brought into each field's range; what is missing or not finite takes its first value. */
export const settledValues = ({ fields }: Kit, values: KitValues): KitValues =>
  Object.fromEntries(
    fields.map(({ key, min, max, initial, choices }) => {
      const value = values[key];
      const within = Math.min(Math.max(value !== undefined && Number.isFinite(value) ? value : initial, min), max);
      return [key, choices ? Math.round(within) : within];
    }),
  );

/** The finish that a kit gives for those numbers. */
export const ownFinish = (kit: Kit, values: KitValues, seed: number): Finish =>
  finish.parse(kit.make(settledValues(kit, values), seededRandom(seed)).finish);

/**
 * A subject made from a kit.
 *
 * @param base id, name and whatever else the subject is to keep: place, turn, group …
 */
export const subjectFromKit = (
  kit: Kit,
  values: KitValues,
  seed: number,
  base: Pick<Subject, 'id' | 'name'> & Partial<Subject>,
): Subject => {
  const settled = settledValues(kit, values);
  const { finish: made, parts } = kit.make(settled, seededRandom(seed));
  const subjectMade = subject.parse({ finish: made, ...base, kit: { name: kit.name, values: settled, seed }, parts });
  const recolour = recolouredParts(subjectMade.parts, finish.parse(made), subjectMade.finish);
  return { ...subjectMade, parts: recolour as Subject['parts'] };
};
