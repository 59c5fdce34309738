import type { z } from 'zod';
import { migrateSetup } from './migrate.ts';
import { checkReferences } from './references.ts';
import { type Setup, setupSchema } from './schema/setup.ts';
import { pathText, SetupError } from './setup-error.ts';

/** Largest setup text that is read, in bytes of UTF-8. */
export const maxSetupBytes = 5_000_000;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Reads a setup from JSON text: size, syntax, version, fields, references, in that order.
 *
 * @returns the setup with all defaults filled in, deeply frozen
 * @throws SetupError naming the line or field and what was expected; nothing else
 */
export const parseSetup = (text: string): Setup => {
  const bytes = text.length > maxSetupBytes ? text.length : new TextEncoder().encode(text).length;
  if (bytes > maxSetupBytes)
    throw new SetupError(
      'size',
      '',
      `the file has ${(bytes / 1e6).toFixed(1)} MB; at most ${maxSetupBytes / 1e6} MB are read`,
    );
  return validateSetup(parseJson(text));
};

/** The same for a value that is already an object, such as one built by an edit or read from storage. */
export const validateSetup = (value: unknown): Setup => {
  if (!isRecord(value)) throw new SetupError('field', '', 'the file must hold one setup: a JSON object');
  if (value['format'] !== 'lampfall-setup')
    throw new SetupError('field', 'format', 'must be "lampfall-setup"; this is not a Lampfall setup');
  const result = setupSchema.safeParse(migrateSetup(value));
  if (!result.success) throw errorFromIssues(result.error.issues);
  checkReferences(result.data);
  return deepFreeze(result.data);
};

const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : '';
    const position = /position (\d+)/.exec(reason)?.[1];
    const before = text.slice(0, position === undefined ? text.length : Number(position));
    const line = before.split('\n').length;
    throw new SetupError('syntax', `line ${line}`, 'must be JSON; the text breaks off or has a stray character here');
  }
};

/** The deepest of zod's issues, in plain words, with a word on how many more there are. */
const errorFromIssues = (issues: readonly z.core.$ZodIssue[]): SetupError => {
  const first = issues[0] as z.core.$ZodIssue;
  const path = [...first.path];
  let expected = first.message;
  if (first.code === 'unrecognized_keys') {
    const key = first.keys[0] as string;
    path.push(key.slice(0, 60));
    expected = 'is not a field of a setup';
  } else if (first.code === 'invalid_type' && valueIsMissing(first)) {
    expected = 'is missing';
  } else if (first.code === 'invalid_type' && /^Invalid input/.test(expected)) {
    expected = `must be ${first.expected === 'object' || first.expected === 'array' ? 'an' : 'a'} ${first.expected}`;
  }
  const more = issues.length > 1 ? ` (and ${issues.length - 1} more)` : '';
  return new SetupError('field', pathText(path), expected + more);
};

const valueIsMissing = (issue: z.core.$ZodIssue): boolean =>
  issue.input === undefined && /undefined/.test(issue.message);

const deepFreeze = <T>(value: T): T => {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const child of Object.values(value)) deepFreeze(child);
  }
  return value;
};
