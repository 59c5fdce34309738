import { CautionMark } from '../ui/CautionMark.tsx';
import type { WalkFit } from './walk-fit.ts';
import { walkText } from './walk-text.ts';

/** What the walk to a pass takes, and whether there is time for it. */
export const WalkWords = ({ fit: { walkSeconds, slackSeconds, late } }: { fit: WalkFit }) => {
  if (walkSeconds === null || slackSeconds === null)
    return <span className="time-words">no way there on foot was found</span>;
  return (
    <span className={late ? 'time-words' : 'time-words quiet'}>
      {late && <CautionMark severity={late} />} walk {walkText(walkSeconds)} · {walkText(Math.abs(slackSeconds))}{' '}
      {slackSeconds < 0 ? 'too late' : 'to spare'}
    </span>
  );
};
