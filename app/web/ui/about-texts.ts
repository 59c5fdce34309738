import type { ReadingName } from '../../../core/readings/about/all-readings.ts';
import type { About } from '../../../core/units/about.ts';

/** What is asked about: a reading by its name, or a caution by its code. */
export type Asked = { readonly reading: ReadingName } | { readonly caution: string };

interface Texts {
  readonly readings: Readonly<Record<ReadingName, About>>;
  readonly cautions: Readonly<Record<string, About>>;
}

const load = async (): Promise<Texts> => {
  const [{ aboutReadings }, { aboutCautions }] = await Promise.all([
    import('../../../core/readings/about/all-readings.ts'),
    import('../../../core/cautions/about/all-cautions.ts'),
  ]);
  return { readings: aboutReadings, cautions: aboutCautions };
};

let texts: Promise<Texts> | null = null;

/** The texts come in a file of their own, once; a failed try is made again when it is next asked for. */
export const fetchAbout = (): Promise<Texts> => {
  texts ??= load().catch((error: unknown) => {
    texts = null;
    throw error;
  });
  return texts;
};

/** What stands behind a reading or a caution; null for a code without a text. */
export const aboutOf = async (asked: Asked): Promise<About | null> => {
  const { readings, cautions } = await fetchAbout();
  return ('reading' in asked ? readings[asked.reading] : cautions[asked.caution]) ?? null;
};
