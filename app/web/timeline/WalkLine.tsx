import type { Track } from './track.ts';
import type { WalkFit } from './walk-fit.ts';
import { walkText } from './walk-text.ts';

const y = 8;
/** Room that the words need, pixels. */
const wordPixels = 66;

/** How it ends: a foot where one is in time, else the shape of the caution about it. */
const endPath = (x: number, late: WalkFit['late']) => {
  if (late === 'danger') return `M${x} 3l6 10h-12Z`;
  return late ? `M${x} 3l5 5l-5 5l-5 -5Z` : `M${x} 4V12`;
};

/** The walk to a pass, from the end of the one before to when one is there; dashed where that is after the lamp goes on. */
export const WalkLine = ({ track, fit }: { track: Track; fit: WalkFit }) => {
  const { startSeconds, walkSeconds, late } = fit;
  if (walkSeconds === null) return null;
  const start = Math.max(track.x(startSeconds), 2);
  const end = Math.min(track.x(startSeconds + walkSeconds), track.width - 8);
  if (end <= start) return null;
  return (
    <g className={late ? 'time-walk time-walk-late' : 'time-walk'} aria-hidden="true">
      <path className="time-walk-way" d={`M${start} ${y}H${late ? end - 5 : end}`} />
      <path className={late ? `time-walk-${late}` : undefined} d={endPath(end, late)} />
      {end - start > wordPixels && (
        <text x={(start + end) / 2} y={y + 4} textAnchor="middle">
          walk {walkText(walkSeconds)}
        </text>
      )}
    </g>
  );
};
