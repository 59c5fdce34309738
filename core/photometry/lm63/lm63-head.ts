import { quoted } from './lm63-error.ts';
import type { Lm63Reader } from './lm63-reader.ts';
import type { Lm63Keyword, Lm63Version } from './photometric-file.ts';

/** The lines before the numbers. */
export interface Lm63Head {
  readonly version: Lm63Version;
  readonly keywords: readonly Lm63Keyword[];
  readonly hasTilt: boolean;
}

const versionForm = /^IES(?:NA)?(?:91|:LM-63-(1986|1991|1995|2002|2019))$/i;
/** A line that means to name an edition, well or badly; other first lines are the free text of 1986. */
const versionStart = /^IES(?:NA)?[\d:]/i;
/** Whether a text names an edition in its first line, as files of all editions but that of 1986 do. */
export const beginsAsLm63 = (text: string): boolean => versionStart.test(text.trimStart());

const keywordForm = /^\[([^[\]]+)\](.*)$/s;
const tiltForm = /^TILT\s*=(.*)$/is;

/**
 * Reads version line, keyword lines and TILT line.
 *
 * Lines without brackets are passed over in all editions: that of 1986 had nothing else, and many later files have some.
 *
 * @throws Lm63Error when the edition is unknown, a bracket is broken, or the TILT line is missing or names another file
 */
export const readHead = (reader: Lm63Reader): Lm63Head => {
  const keywords: { key: string; value: string }[] = [];
  let version: Lm63Version | null = null;
  for (let line = reader.nextLine(); line !== null; line = reader.nextLine()) {
    const tilt = tiltForm.exec(line);
    if (tilt) return { version: version ?? 1986, keywords, hasTilt: hasTilt(reader, (tilt[1] as string).trim()) };
    if (line === '') continue;
    if (version === null) {
      version = versionOf(reader, line);
      if (version !== 1986) continue;
    }
    addKeyword(reader, version, keywords, line);
  }
  throw reader.fault('must be followed by a line TILT=NONE or TILT=INCLUDE; the file ends here');
};

const versionOf = (reader: Lm63Reader, line: string): Lm63Version => {
  const found = versionForm.exec(line);
  if (found) return Number(found[1] ?? 1991) as Lm63Version;
  if (versionStart.test(line))
    throw reader.fault(
      `must be IESNA91, IESNA:LM-63-1995, IESNA:LM-63-2002 or IES:LM-63-2019, or no version; found ${quoted(line)}`,
    );
  return 1986;
};

const addKeyword = (
  reader: Lm63Reader,
  version: Lm63Version,
  keywords: { key: string; value: string }[],
  line: string,
): void => {
  const found = keywordForm.exec(line);
  const key = (found?.[1] ?? '').trim().toUpperCase();
  const value = (found?.[2] ?? '').trim();
  const last = keywords.at(-1);
  if (key === 'MORE') {
    if (!last) throw reader.fault('must be a keyword that [MORE] can go on from');
    last.value += `\n${value}`;
  } else if (key) keywords.push({ key, value });
  else if (line.startsWith('[') && version !== 1986)
    throw reader.fault(`must be a keyword in square brackets, as [TEST]; found ${quoted(line)}`);
};

const hasTilt = (reader: Lm63Reader, given: string): boolean => {
  const word = given.toUpperCase();
  if (word === 'NONE' || word === 'INCLUDE') return word === 'INCLUDE';
  throw reader.fault(
    given === ''
      ? 'must be TILT=NONE or TILT=INCLUDE; nothing follows TILT='
      : `must be TILT=NONE or TILT=INCLUDE; ${quoted(given)} names another file, and its tilt factors are not in this one`,
  );
};
