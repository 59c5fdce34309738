import type { z } from 'zod';
import { pathText, SetupError } from './setup-error.ts';

type Issue = z.core.$ZodIssue;

const shapes: Readonly<Record<string, string>> = { string: 'a text', array: 'a list', object: 'an object' };

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inner, key) => (typeof inner === 'object' && inner !== null ? (inner as Record<PropertyKey, unknown>)[key] : null),
    value,
  );

/** What was expected: our own words where the schema has them, else zod's code put plainly. */
const expectedAt = (issue: Issue): string => {
  if (!/^(?:Invalid|Too|Unrecognized)\b/.test(issue.message)) return issue.message;
  switch (issue.code) {
    case 'invalid_type':
      return `must be ${shapes[issue.expected] ?? `a ${issue.expected}`}`;
    case 'invalid_value':
      return `must be ${issue.values.map((value) => JSON.stringify(value)).join(' or ')}`;
    case 'unrecognized_keys':
      return 'is not a field of a setup';
    default:
      return 'is not as expected here';
  }
};

/** The first of zod's issues about a document, in plain words, with a word on how many more there are. */
export const errorFromIssues = (document: unknown, issues: readonly Issue[]): SetupError => {
  const first = issues[0] as Issue;
  const unknownKey = first.code === 'unrecognized_keys' ? first.keys.slice(0, 1) : [];
  const isMissing = unknownKey.length === 0 && valueAt(document, first.path) === undefined;
  const expected = `${isMissing ? 'is missing; ' : ''}${expectedAt(first)}`;
  const more = issues.length > 1 ? ` (and ${issues.length - 1} more)` : '';
  return new SetupError('field', pathText([...first.path, ...unknownKey]), expected + more);
};
