import type { PassPlace } from '../../../core/sweep/pass-at.ts';
import { useApp, useScheme } from '../state/app-store.ts';
import { useSweeps } from '../state/sweeps.ts';

/** The pass that would be swept: the selected one, else the one that was, else the first of the scheme; null without any. */
export const useSweptPass = (): PassPlace | null => {
  const scheme = useScheme();
  const selection = useApp((state) => state.selection);
  const last = useSweeps((state) => state.run?.place);
  const places = scheme.frames.flatMap(({ id, passes }) =>
    passes.map((pass): PassPlace => ({ schemeId: scheme.id, frameId: id, passId: pass.id })),
  );
  const find = (like: { readonly frameId: string; readonly passId: string } | null | undefined) =>
    like && places.find(({ frameId, passId }) => frameId === like.frameId && passId === like.passId);
  return find(selection?.kind === 'pass' ? selection : null) ?? find(last) ?? places[0] ?? null;
};
