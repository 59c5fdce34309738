import { putHintsAway, useHints } from '../state/hints.ts';
import { Hint } from '../ui/Hint.tsx';

/** The one sentence that the page opens with. */
export const Welcome = () => {
  const isAway = useHints(({ away }) => away.includes('welcome'));
  if (isAway) return null;
  return (
    <Hint label="What this page is" className="hint-welcome" onPutAway={() => putHintsAway('welcome')}>
      This is what the camera would record. Walk the lamp round before you travel.
    </Hint>
  );
};
