import { useScheme } from '../state/app-store.ts';
import { putHintsAway, useHints } from '../state/hints.ts';
import { Hint } from '../ui/Hint.tsx';

/** In the empty corner of the plan: what is done with a lamp. */
export const LampHint = () => {
  const isAway = useHints(({ away }) => away.includes('lamp'));
  const { frames } = useScheme();
  if (isAway || frames.every(({ passes }) => passes.length === 0)) return null;
  return (
    <Hint label="What to do first" className="hint-plan" onPutAway={() => putHintsAway('lamp')}>
      <em>Drag the lamp</em> to six o’clock
    </Hint>
  );
};
