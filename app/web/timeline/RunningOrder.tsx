import { exactSeconds } from '../../../core/units/third-stops.ts';
import { useReport } from '../state/reports.ts';
import { minutesText } from '../ui/minutes-text.ts';
import { waitedForSeconds } from '../ui/walk-words.ts';
import { shutterText } from '../ui/words.ts';
import { orderWords } from './pass-words.ts';
import type { Turn } from './turns.ts';

/** The whole night's run as a numbered list, by the clock that starts with the first shutter. */
export const RunningOrder = ({ turns }: { turns: readonly Turn[] }) => {
  const backSeconds = waitedForSeconds(useReport()?.walks ?? [], { frames: turns.map(({ frame }) => frame) });
  return (
    <section className="time-order" aria-label="Running order">
      <h2>Running order</h2>
      <ol>
        {turns.map(({ frame, order }) => (
          <li key={frame.id}>
            <span className="time-at">{minutesText(order.startSeconds)}</span>
            <span>
              {order.number} {frame.name} · {shutterText(frame.seconds)}
              {'\u00a0'}s
            </span>
            {[...frame.passes]
              .sort((a, b) => a.on - b.on)
              .map((pass) => (
                <div key={pass.id} className="time-order-pass">
                  <span className="time-at">{minutesText(order.startSeconds + pass.on)}</span>
                  <span>
                    {pass.name}, {orderWords(pass)}
                  </span>
                </div>
              ))}
          </li>
        ))}
      </ol>
      <p>
        <span className="time-at">{minutesText(turns.at(-1)?.order.endSeconds ?? 0)}</span>
        <span>in all, from the first shutter to the last</span>
      </p>
      {backSeconds >= 0.5 && (
        <p>
          <span className="time-at">+ {minutesText(backSeconds)}</span>
          <span>on foot back to the camera, where frames are set otherwise than the one before</span>
        </p>
      )}
      {turns.some(({ frame }) => Math.abs(exactSeconds(frame.seconds) - frame.seconds) > 0.4) && (
        <p className="quiet">Marked times are rounded by the trade: 15 s is 16, 30 is 32.</p>
      )}
    </section>
  );
};
