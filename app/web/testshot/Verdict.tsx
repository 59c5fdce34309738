import type { Frame, Lamp } from '../../../core/setup/schema/setup.ts';
import { restDoubtStops } from '../../../core/testshot/lamp-from-shot.ts';
import { realWords } from '../ui/real-words.ts';
import { shutterText } from '../ui/words.ts';
import type { CountChange } from './count-changes.ts';
import type { ShotAnswer } from './judge-shot.ts';
import type { ShotOutcome } from './shot-outcome.ts';
import { differenceWords, lampWords, withinDoubtWords } from './shot-words.ts';

interface VerdictProps {
  /** Whether the rehearsal stands, for a spot of it to be pointed at. */
  readonly isDrawn: boolean;
  readonly answer: ShotAnswer | null;
  /** Whether the user has pointed at a spot. */
  readonly isPointed: boolean;
  readonly lamp: Lamp;
  readonly frame: Frame;
  /** What the shot would make of the lamp; null where it says nothing. */
  readonly outcome: ShotOutcome | null;
  readonly onLamp: () => void;
  readonly onCount: () => void;
}

/** Boxes are off by a stop or so; beyond this something else is more likely. Common practice, no published source. */
const doubtfulStops = 2;

const countText = (counts: readonly CountChange[]): string =>
  counts.map(({ from, to }) => `${shutterText(from)} s → ${shutterText(to)} s`).join(', ');

/** Measured against predicted, in one sentence, and what can be done about it. */
export const Verdict = ({ isDrawn, answer, isPointed, lamp, frame, outcome, onLamp, onCount }: VerdictProps) => {
  if (!isDrawn)
    return (
      <p role="status">
        {isPointed ? 'The' : 'Press a lit spot in the photo. The'} rehearsal is still being drawn: the spot is measured
        as soon as it stands.
      </p>
    );
  if (!isPointed) return <p role="status">Press a lit spot in the photo, and the same spot in the rehearsal.</p>;
  if (!answer) return <p role="status">Measuring the spot…</p>;
  if ('refused' in answer) return <p role="status">{answer.refused}</p>;
  const { compared } = answer;
  const difference = differenceWords(compared.differenceStops, compared.uncertaintyStops);
  if ('refused' in answer.lamp)
    return (
      <p role="status">
        {difference} {answer.lamp.refused}
      </p>
    );
  if (!outcome) return null;
  const { verdict, after, counts, movedStops, isWithinDoubt, stays } = outcome;
  return (
    <div className="shot-verdict">
      <p role="status" className="shot-sentence">
        {difference} {lampWords(lamp.name, verdict.stops)}
      </p>
      {Math.abs(answer.lamp.stops) > doubtfulStops && (
        <p className="shot-doubt">
          That is far off for a lamp. First ask: was it this frame, this count, level and gel? Was the battery full, the
          photo not brightened since?
        </p>
      )}
      <p className="quiet">
        {answer.lamp.share < 0.95 &&
          `${Math.round(100 * answer.lamp.share)} % of the light there is the lamp’s; the rest is taken as predicted, give or take ${restDoubtStops} stop. `}
        A camera’s own tone curve may be worth ±{compared.curveStops.toFixed(1)} stop of this. A neutral picture style
        and a spot near mid-grey make it less.
      </p>
      {isWithinDoubt && !stays && <p>{withinDoubtWords(movedStops, verdict.uncertaintyStops)}</p>}
      <div className="actions">
        <button type="button" className={isWithinDoubt ? undefined : 'strong'} onClick={onLamp}>
          Correct the lamp: {realWords(after.correctionStops, after.testShots.length)}
        </button>
        {counts && counts.length > 0 && (
          <button type="button" onClick={onCount}>
            Correct the count: {countText(counts)}
          </button>
        )}
      </div>
      <p className="quiet">
        {stays
          ? 'With the shots before it the lamp stays as it is taken for, and so do the counts.'
          : counts?.length === 0
            ? 'It makes the rehearsal show what the photo shows. The counts stay as they are.'
            : counts
              ? 'The first makes the rehearsal show what the photo shows. The second corrects the lamp too, and counts so that the next frame comes out as planned.'
              : `“${frame.name}” does not hold the count that would make up for it; correct the lamp, then change its level, the ISO or the shutter.`}
      </p>
    </div>
  );
};
