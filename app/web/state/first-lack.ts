import type { Setup } from '../../../core/setup/schema/setup.ts';

/** What a place lacks first: something to light, then a light; null where both are there. */
export const firstLack = ({ subjects, schemes }: Setup): 'subject' | 'lamp' | null => {
  if (subjects.length === 0) return 'subject';
  const isLit = schemes.some(({ frames }) => frames.some(({ passes }) => passes.length > 0));
  return isLit ? null : 'lamp';
};
