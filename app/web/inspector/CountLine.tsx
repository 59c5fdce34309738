import type { PassReading } from '../../../core/readings/pass-reading.ts';
import { useApp, useScheme } from '../state/app-store.ts';
import { setPassSeconds } from '../state/edits/pass-edits.ts';
import { shutterText, signed, threeFigures } from '../ui/words.ts';

const secondsText = (seconds: number | null, levelPercent: number | undefined): string => {
  if (seconds === null) return levelPercent === 0 ? 'the level is 0 %' : 'no light where its cross is';
  return `${seconds < 0.3 ? shutterText(seconds) : threeFigures(seconds)} s`;
};

/** How long to count for the night level, and what else would do. Stands in the open slip of the selected pass. */
export const CountLine = ({ reading: { passId, count } }: { reading: PassReading }) => {
  const scheme = useScheme();
  const selection = useApp((state) => state.selection);
  const { edit } = useApp.getState();
  const frameId = selection?.kind === 'pass' ? selection.frameId : '';
  const pass = scheme.frames.find(({ id }) => id === frameId)?.passes.find(({ id }) => id === passId);
  const { seconds, spoken, spokenStops, advice } = count;
  const isCounted = pass !== undefined && Math.abs(pass.off - pass.on - (spoken ?? 0)) < 0.005;
  const set = (to: number) => edit((setup) => setPassSeconds(setup, { schemeId: scheme.id, frameId, passId }, to));
  return (
    <div className="row">
      <dt>Count for {signed(count.wantedStops)} stops</dt>
      <dd className="count-line">
        <span>{secondsText(seconds, pass?.levelPercent)}</span>
        {spoken !== null &&
          (isCounted ? (
            <span>count {spoken}</span>
          ) : (
            <button type="button" className="small" onClick={() => set(spoken)}>
              Count {spoken} s
            </button>
          ))}
        {spokenStops !== null && <span>{signed(spokenStops)} stops</span>}
      </dd>
      {advice.length > 0 && (
        <dd className="count-advice">
          <ul>
            {advice.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </dd>
      )}
    </div>
  );
};
