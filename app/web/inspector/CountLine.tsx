import { type CountStep, countLadder } from '../../../core/readings/count.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import { useApp, useScheme } from '../state/app-store.ts';
import { setPassSeconds } from '../state/edits/pass-edits.ts';
import { worded } from '../ui/lengths.ts';
import { useWhy } from '../ui/use-why.tsx';
import { shutterText, signed, threeFigures } from '../ui/words.ts';

interface LadderProps {
  readonly steps: readonly CountStep[];
  readonly count: number;
  readonly onTake: (seconds: number) => void;
}

const secondsText = (seconds: number | null, levelPercent: number | undefined): string => {
  if (seconds === null) return levelPercent === 0 ? 'the level is 0 %' : 'no light where its cross is';
  return `${seconds < 0.3 ? shutterText(seconds) : threeFigures(seconds)} s`;
};

/** Easy counts round the night level, each with the level that it gives; pressed, it is taken. */
const Ladder = ({ steps, count, onTake }: LadderProps) => (
  <dd className="count-ladder">
    <ul aria-label="Counts and the level that each gives">
      {steps.map(({ seconds, stops }) => (
        <li key={seconds}>
          <button
            type="button"
            className="small"
            aria-pressed={Math.abs(count - seconds) < 0.005}
            onClick={() => onTake(seconds)}
          >
            {seconds} s
          </button>{' '}
          {signed(stops)}
        </li>
      ))}
    </ul>
  </dd>
);

/** How long to count for the night level, and what else would do. Stands in the open slip of the selected pass. */
export const CountLine = ({ reading: { passId, count } }: { reading: PassReading }) => {
  const scheme = useScheme();
  const selection = useApp((state) => state.selection);
  const { edit } = useApp.getState();
  const frameId = selection?.kind === 'pass' ? selection.frameId : '';
  const frame = scheme.frames.find(({ id }) => id === frameId);
  const pass = frame?.passes.find(({ id }) => id === passId);
  const { seconds, spoken, spokenStops, advice } = count;
  const why = useWhy({ reading: 'count' }, `Count for ${signed(count.wantedStops)} stops`);
  const isCounted = pass !== undefined && Math.abs(pass.off - pass.on - (spoken ?? 0)) < 0.005;
  const set = (to: number) => edit((setup) => setPassSeconds(setup, { schemeId: scheme.id, frameId, passId }, to));
  // from the count that is needed, which does not change with the one that is kept; a lamp that stays lit has none
  const steps =
    frame && pass && spoken !== null && seconds !== null
      ? countLadder(
          { seconds, levelPercent: pass.levelPercent, iso: frame.iso, stops: count.wantedStops },
          count.wantedStops,
          frame.seconds,
        )
      : [];
  return (
    <div className="row">
      <dt>{why.button}</dt>
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
      {why.text && <dd className="why-row">{why.text}</dd>}
      {pass && steps.length > 1 && <Ladder steps={steps} count={pass.off - pass.on} onTake={set} />}
      {advice.length > 0 && (
        <dd className="count-advice">
          <ul>
            {advice.map((sentence) => (
              <li key={sentence}>{worded(sentence)}</li>
            ))}
          </ul>
        </dd>
      )}
    </div>
  );
};
