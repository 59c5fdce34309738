import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';

/** Stands for the picture without lamps; no scheme can be called so. */
export const unlitId = ':unlit';

/** Most schemes that stand side by side. */
export const mostCompared = 6;

/** Two pictures laid over each other: schemes by id, `unlitId` for the one without lamps. */
export interface Pair {
  readonly kind: 'wipe' | 'difference';
  readonly a: string;
  readonly b: string;
}

/** The schemes that are compared, in the order of the document. */
export const comparedSchemes = ({ schemes }: Setup, ids: readonly string[] | null): Scheme[] => {
  const chosen = ids ? schemes.filter(({ id }) => ids.includes(id)) : schemes;
  return (chosen.length > 0 ? chosen : schemes).slice(0, mostCompared);
};

/** The compared schemes, and those that are laid over each other without being ticked. */
export const seenSchemes = (setup: Setup, ids: readonly string[] | null, pair: Pair | null): Scheme[] => {
  const compared = comparedSchemes(setup, ids);
  const isSeen = (scheme: Scheme) => compared.includes(scheme) || scheme.id === pair?.a || scheme.id === pair?.b;
  return setup.schemes.filter(isSeen);
};
