import { CautionMark } from '../ui/CautionMark.tsx';
import type { WalkFit } from './walk-fit.ts';
import { walkText } from './walk-text.ts';

/** What the walk to a pass takes, and whether there is time for it. */
export const WalkWords = ({ fit: { walkSeconds, slackSeconds, late, delaySeconds } }: { fit: WalkFit }) => {
  if (walkSeconds === null || slackSeconds === null)
    return <span className="time-words">no way there on foot was found</span>;
  const walk = `${delaySeconds === null ? 'walk' : 'from the camera'} ${walkText(walkSeconds)}`;
  if (delaySeconds !== null && slackSeconds < 0)
    return (
      <span className="time-words">
        {late && <CautionMark severity={late} />} {walk}: {late ? 'delay' : 'first delay'} {delaySeconds} s
        {late ? '' : ', or a remote'}
      </span>
    );
  return (
    <span className={late ? 'time-words' : 'time-words quiet'}>
      {late && <CautionMark severity={late} />} {walk} · {walkText(Math.abs(slackSeconds))}{' '}
      {slackSeconds < 0 ? 'too late' : 'to spare'}
    </span>
  );
};
