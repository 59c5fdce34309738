import { useFrame } from '../state/app-store.ts';
import { useWidth } from '../ui/use-width.ts';
import type { Turn } from './turns.ts';

const height = 24;

/** The whole night on one scale, small: delays dashed, shutters as boxes, lamps as lines in them. */
export const NightStrip = ({ turns }: { turns: readonly Turn[] }) => {
  const shownId = useFrame().id;
  const [ref, width] = useWidth<HTMLDivElement>();
  const begin = -(turns[0]?.frame.delaySeconds ?? 0);
  const end = turns.at(-1)?.order.endSeconds ?? 1;
  const x = (seconds: number) => 2 + ((seconds - begin) / (end - begin)) * Math.max(width - 4, 1);
  return (
    <div ref={ref} className="time-night">
      {width > 0 && (
        <svg viewBox={`0 0 ${width} ${height}`} height={height} aria-hidden="true">
          {turns.map(({ frame, order: { startSeconds, endSeconds } }) => (
            <g key={frame.id} className={frame.id === shownId ? 'time-shown' : undefined}>
              <path
                className="time-delay"
                d={`M${x(startSeconds - frame.delaySeconds)} ${height / 2}H${x(startSeconds)}`}
              />
              <rect
                x={x(startSeconds)}
                y={5}
                width={Math.max(x(endSeconds) - x(startSeconds), 2)}
                height={height - 10}
              />
              {frame.passes.map(({ id, on, off }) => (
                <path
                  key={id}
                  className="time-lit"
                  d={`M${x(startSeconds + on)} ${height / 2}H${x(startSeconds + off)}`}
                />
              ))}
            </g>
          ))}
        </svg>
      )}
    </div>
  );
};
