import { useScheme, useSetup } from '../state/app-store.ts';
import { isLampHinted, putHintsAway, useHints } from '../state/hints.ts';
import { Hint } from '../ui/Hint.tsx';

/** In the empty corner of the plan: what is done with a lamp. */
export const LampHint = () => {
  const isAway = useHints(({ away }) => away.includes('lamp'));
  const setup = useSetup();
  const { frames } = useScheme();
  if (isAway || !isLampHinted(setup) || frames.every(({ passes }) => passes.length === 0)) return null;
  return (
    <Hint label="What to do first" className="hint-plan" onPutAway={() => putHintsAway('lamp')}>
      <em>Drag the lamp</em> to half past five, beside the camera
    </Hint>
  );
};
