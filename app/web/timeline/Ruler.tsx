import { shutterText } from '../ui/words.ts';
import { clockSeconds, type Track, ticksOf } from './track.ts';

const height = 32;
const line = 24;
/** From the middle of the delay's words to the shutter, pixels. */
const wordPixels = 40;
/** Room that a number needs, pixels. */
const numberPixels = 44;

/** Two strokes across a line that is not to scale. */
const shortened = (x: number) => `M${x - 5} ${line + 5}l4 -10M${x} ${line + 5}l4 -10`;

/** A frame's clock: the delay, the shutter opening and closing, and the seconds between. */
export const Ruler = ({ track, delaySeconds }: { track: Track; delaySeconds: number }) => {
  const [open, close] = [track.x(0), track.x(track.seconds)];
  const start = track.x(-delaySeconds);
  const ticks = ticksOf(track, numberPixels);
  return (
    <svg className="time-ruler" viewBox={`0 0 ${track.width} ${height}`} height={height} aria-hidden="true">
      {delaySeconds > 0 && (
        <>
          <path className="time-delay" d={`M${start} ${line}H${open}`} />
          {track.isDelayShortened && <path d={shortened(open - 8)} />}
          <text x={Math.min((start + open) / 2, open - wordPixels)} y={14} textAnchor="middle">
            wait {clockSeconds(delaySeconds)} s
          </text>
        </>
      )}
      <path d={`M${open} ${line}H${close}M${open} 18V${height}M${close} 18V${height}`} />
      {ticks.map((seconds) => {
        const x = track.x(seconds);
        return (
          <g key={seconds}>
            <path d={`M${x} ${line}v5`} />
            {x < close - numberPixels && (
              <text x={x} y={14} textAnchor="middle">
                {clockSeconds(seconds)}
              </text>
            )}
          </g>
        );
      })}
      <text x={close + 8} y={14} textAnchor="end" className="time-close">
        {shutterText(track.seconds)} s
      </text>
    </svg>
  );
};
