import { errorFromIssues } from './field-error.ts';
import { migrateSetup } from './migrate.ts';
import { parseJson } from './parse-json.ts';
import { checkReferences } from './references.ts';
import { type Setup, setupSchema } from './schema/setup.ts';
import { settle } from './settle.ts';
import { SetupError } from './setup-error.ts';
import { sizeFault } from './setup-size.ts';

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Reads a setup from JSON text: size, syntax, version, fields, references, in that order. A byte order mark is let pass.
 *
 * @returns the setup with all defaults filled in, deeply frozen
 * @throws SetupError naming the line or field and what was expected; nothing else
 */
export const parseSetup = (text: string): Setup => {
  const tooLong = sizeFault(text);
  if (tooLong) throw new SetupError('size', '', tooLong);
  return validateSetup(parseJson(text.replace(/^\ufeff/, '')));
};

/** The same for a value that is already an object, such as one built by an edit or read from storage. */
export const validateSetup = (value: unknown): Setup => {
  if (!isRecord(value)) throw new SetupError('field', '', 'the file must hold one setup: a JSON object');
  if (value['format'] !== 'lampfall-setup')
    throw new SetupError('field', 'format', 'this is not a Lampfall setup; expected "lampfall-setup" here');
  const document = migrateSetup(value);
  const result = setupSchema.safeParse(document);
  if (!result.success) throw errorFromIssues(document, result.error.issues);
  checkReferences(result.data);
  return settle(result.data);
};
