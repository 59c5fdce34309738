import { isSweeping, useSweeps } from '../state/sweeps.ts';
import { picturesText } from './kind-words.ts';

/** How far a sweep is, in words and as a bar. */
export const SweepProgress = () => {
  const isBusy = useSweeps(isSweeping);
  const isCancelled = useSweeps((state) => state.isCancelled);
  const { stage, shown, share } = useSweeps((state) => state.pictures);
  const read = useSweeps((state) => Object.keys(state.readings).length);
  const all = useSweeps((state) => state.run?.cells.length ?? 0);
  const hasNoReadings = useSweeps((state) => state.hasNoReadings);
  const words = {
    first: `${shown} of ${picturesText(all)} · ${Math.floor(100 * share)} %`,
    refining: `Refining · ${Math.floor(100 * share)} %`,
    done: `Numbers of ${read} of ${all}`,
  };
  return (
    <>
      {isBusy && (
        <span className="sweep-progress">
          <progress max={1} value={stage === 'done' ? read / all : share} aria-label="Progress of the sweep" />
          <span>{words[stage]}</span>
        </span>
      )}
      <span role="status" className="quiet">
        {!isBusy && (isCancelled ? `Cancelled at ${shown} of ${picturesText(all)}` : picturesText(all))}
      </span>
      {hasNoReadings && <span className="quiet">The numbers could not be worked out.</span>}
    </>
  );
};
