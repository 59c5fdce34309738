import { checkDetail } from '../../../../core/setup/references.ts';
import type { Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../../core/setup/setup-error.ts';
import { savedSizeFault } from '../../../../core/setup/setup-size.ts';
import { EditRefused } from './edit-refused.ts';

/** Most subjects of a setup, and most parts of a subject, as the document takes them. */
export const maxSubjects = 500;
export const maxParts = 2000;

/** The setup itself, where its subjects are not too many for the document, nor its file too long to be opened again. Throws `EditRefused`. */
export const withinLimits = (setup: Setup): Setup => {
  if (setup.subjects.length > maxSubjects)
    throw new EditRefused(`There are ${maxSubjects} subjects already; more are not taken. Delete one first.`);
  const crowded = setup.subjects.find(({ parts }: Subject) => parts.length > maxParts);
  if (crowded) throw new EditRefused(`${crowded.name} has ${maxParts} parts already; more are not taken.`);
  try {
    checkDetail(setup);
  } catch (error) {
    if (error instanceof SetupError) throw new EditRefused(`This ${error.expected}. Nothing was changed.`);
    throw error;
  }
  const tooLong = savedSizeFault(setup);
  if (tooLong) throw new EditRefused(`With this ${tooLong}. Nothing was changed.`);
  return setup;
};
