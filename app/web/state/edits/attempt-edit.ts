import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';

/** Makes an edit, or says why it can't be made. */
export const attemptEdit = (
  change: (setup: Setup) => Setup,
  setup: Setup,
): { readonly setup: Setup } | { readonly refused: string } => {
  try {
    return { setup: change(setup) };
  } catch (error) {
    if (error instanceof EditRefused) return { refused: error.message };
    throw error;
  }
};
