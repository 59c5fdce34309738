import { useMemo, useRef, useState } from 'react';
import { useScheme } from '../state/app-store.ts';
import { CautionMark } from '../ui/CautionMark.tsx';
import { minutesText } from '../ui/minutes-text.ts';
import { usePageRoom } from '../ui/use-page-room.ts';
import { FrameClock } from './FrameClock.tsx';
import { NightStrip } from './NightStrip.tsx';
import { RunningOrder } from './RunningOrder.tsx';
import { turnsOf } from './turns.ts';
import { useWalkFits } from './use-walk-fits.ts';

/** When each frame is exposed and each lamp is on: a thin strip that opens to a clock for every frame. */
export const TimeLine = () => {
  const scheme = useScheme();
  const [isOpen, setIsOpen] = useState(false);
  const turns = useMemo(() => turnsOf(scheme), [scheme]);
  const fitOf = useWalkFits(turns);
  const ref = useRef<HTMLElement>(null);
  usePageRoom(ref, '--time');
  const late = turns.flatMap(({ frame }) => frame.passes.flatMap((pass) => fitOf(frame, pass)?.late ?? []));
  const count = turns.length === 1 ? '1 frame' : `${turns.length} frames`;
  return (
    <section ref={ref} className="time-line" aria-label="Time line" data-open={isOpen}>
      <div className="time-head">
        <button type="button" className="time-toggle" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
          Time line
        </button>
        <NightStrip turns={turns} />
        <span className="time-total">
          {late.length > 0 && (
            <>
              <CautionMark severity={late.includes('danger') ? 'danger' : 'warning'} />{' '}
              {late.length === 1 ? 'a walk is' : `${late.length} walks are`} too long ·{' '}
            </>
          )}
          {count} · {minutesText(turns.at(-1)?.order.endSeconds ?? 0)}
        </span>
      </div>
      <div className="time-body">
        <svg width={0} height={0} aria-hidden="true" className="time-patterns">
          <pattern id="time-hatch" width={6} height={6} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path d="M0 0V6" />
          </pattern>
        </svg>
        <div className="time-frames">
          {turns.map((turn) => (
            <FrameClock
              key={turn.frame.id}
              schemeId={scheme.id}
              turn={turn}
              fitOf={(pass) => fitOf(turn.frame, pass)}
            />
          ))}
        </div>
        <RunningOrder turns={turns} />
      </div>
    </section>
  );
};
