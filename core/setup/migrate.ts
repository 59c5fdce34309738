import { glowTenDegreesUp } from './migrations/glow-ten-degrees-up.ts';
import { setupVersion } from './schema/setup.ts';
import { SetupError } from './setup-error.ts';

/** Turns a document of the version it is filed under into the next version. */
type Migration = (document: Record<string, unknown>) => Record<string, unknown>;

/** What a version only adds, an older document lacks: the defaults fill it in. */
const onlyAdds: Migration = (document) => document;

/** One step for each version that has a successor. Version 3 adds the card, nights, test shots and the length of a pace. */
const migrations: Readonly<Record<number, Migration>> = { 1: glowTenDegreesUp, 2: onlyAdds };

/** One step; whatever it throws becomes a SetupError, for a step meets documents that nobody has checked yet. */
const take = (step: Migration, document: Record<string, unknown>, version: number, from: number) => {
  try {
    return step(document);
  } catch (error) {
    if (error instanceof SetupError) throw error;
    throw new SetupError(
      'version',
      'version',
      `is ${version}; the file could not be brought from version ${from} to ${from + 1}`,
    );
  }
};

/** Brings an older document up to the present version, step by step. Throws `SetupError` for versions it does not know. */
export const migrateSetup = (
  document: Record<string, unknown>,
  steps: Readonly<Record<number, Migration>> = migrations,
  target: number = setupVersion,
): Record<string, unknown> => {
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    throw new SetupError('version', 'version', `must be a whole number from 1 to ${target}`);
  if (version > target)
    throw new SetupError(
      'version',
      'version',
      `is ${version}; this program reads up to ${target}. A newer Lampfall wrote this file`,
    );
  let current = document;
  for (let from = version; from < target; from++) {
    const step = steps[from];
    if (!step)
      throw new SetupError('version', 'version', `is ${version}; no way is known from version ${from} to ${from + 1}`);
    current = { ...take(step, current, version, from), version: from + 1 };
  }
  return current;
};
