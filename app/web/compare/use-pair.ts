import { useMemo } from 'react';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { WantedLight } from '../picture/scene-of.ts';
import { useScheme, useSetup } from '../state/app-store.ts';
import { type Pair, unlitId } from '../state/compared-schemes.ts';
import { useComparedSchemes } from '../state/schemes-on-screen.ts';

/** One of two pictures that are laid over each other. */
export interface Side {
  readonly id: string;
  readonly name: string;
  readonly light: WantedLight;
}

export interface PairOfSides {
  readonly a: Side;
  readonly b: Side;
  /** What a or b may be, in words. */
  readonly options: readonly (readonly [id: string, name: string])[];
}

/** The picture without lamps has camera and exposure of the one that it is laid over. */
const sideOf = (setup: Setup, id: string, other: string): Side => {
  const schemeOf = (wanted: string) => setup.schemes.find((scheme) => scheme.id === wanted);
  const scheme = schemeOf(id) ?? schemeOf(other) ?? (setup.schemes[0] as Scheme);
  const isUnlit = id === unlitId;
  return { id, name: isUnlit ? 'Unlit' : scheme.name, light: { setup, scheme, isUnlit } };
};

/** The two pictures that were chosen; where nothing was, or it is gone, the present scheme and the next one. */
export const usePair = ({ a, b }: Pair): PairOfSides => {
  const setup = useSetup();
  const present = useScheme();
  const compared = useComparedSchemes();
  const isThere = (id: string) => id === unlitId || setup.schemes.some((scheme) => scheme.id === id);
  const first = isThere(a) ? a : present.id;
  const beside = [...compared.map(({ id }) => id), unlitId].find((id) => id !== first);
  const second = isThere(b) && b !== first ? b : (beside as string);
  return useMemo(
    () => ({
      a: sideOf(setup, first, second),
      b: sideOf(setup, second, first),
      options: [...setup.schemes.map(({ id, name }) => [id, name] as const), [unlitId, 'Unlit'] as const],
    }),
    [setup, first, second],
  );
};
