import { useSession } from '../state/session.ts';
import { paceWords, tapeWords } from '../ui/tape-words.ts';

/** Takes the measuring tape out and puts it away; says what it measures. */
export const TapeBar = () => {
  const tape = useSession((state) => state.tape);
  const { set } = useSession.getState();
  return (
    <div className="tape-bar">
      <button
        type="button"
        className="small"
        aria-pressed={tape !== null}
        title="Measure between two places"
        onClick={() => set({ tape: tape ? null : { from: null, to: null } })}
      >
        Measure
      </button>
      {tape && (
        <span role="status" title={paceWords}>
          {tapeWords(tape)}
        </span>
      )}
    </div>
  );
};
