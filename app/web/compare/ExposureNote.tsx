import { useApp, useScheme } from '../state/app-store.ts';
import { makeExposureAlike } from '../state/edits/compare-edits.ts';
import { useSeenSchemes } from '../state/schemes-on-screen.ts';
import { exposureDifferences } from './exposure-words.ts';

/** Says which of the compared schemes are exposed otherwise than the present one, and makes them alike. */
export const ExposureNote = () => {
  const present = useScheme();
  const seen = useSeenSchemes();
  const { edit } = useApp.getState();
  const differences = exposureDifferences(present, seen);
  if (differences.length === 0) return null;
  const ids = seen.map(({ id }) => id);
  return (
    <p className="exposure-note" role="status">
      <span>
        Not exposed as {present.name}: {differences.join(' · ')}
      </span>
      <button type="button" className="small" onClick={() => edit((s) => makeExposureAlike(s, present.id, ids))}>
        Make alike
      </button>
    </p>
  );
};
