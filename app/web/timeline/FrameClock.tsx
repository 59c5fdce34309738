import type { Pass } from '../../../core/setup/schema/setup.ts';
import { Empty } from '../frames/Empty.tsx';
import { useApp, useFrame } from '../state/app-store.ts';
import { setFrameNumber } from '../state/edits/frame-edits.ts';
import { minutesText } from '../ui/minutes-text.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { useWidth } from '../ui/use-width.ts';
import { PassLane } from './PassLane.tsx';
import { Ruler } from './Ruler.tsx';
import { trackOf } from './track.ts';
import type { Turn } from './turns.ts';
import type { WalkFit } from './walk-fit.ts';

interface FrameClockProps {
  readonly schemeId: string;
  readonly turn: Turn;
  readonly fitOf: (pass: Pass) => WalkFit | null;
}

/** One frame from shutter to shutter, and its passes on one scale. */
export const FrameClock = ({ schemeId, turn, fitOf }: FrameClockProps) => {
  const { frame, order } = turn;
  const { edit, chooseFrame } = useApp.getState();
  const shownId = useFrame().id;
  const showsBlend = useApp((state) => state.showsBlend);
  const [ref, width] = useWidth<HTMLDivElement>();
  const track = trackOf(width, frame.seconds, frame.delaySeconds);
  const place = { schemeId, frameId: frame.id };
  return (
    <section className="time-frame" aria-label={`Frame ${frame.name}`}>
      <div className="time-row">
        <div className="time-frame-name">
          <span className="quiet">{order.number}</span>
          <button
            type="button"
            className="time-name"
            aria-label={`Show ${frame.name}`}
            aria-pressed={!showsBlend && frame.id === shownId}
            onClick={() => chooseFrame(frame.id)}
          >
            {frame.name}
          </button>
        </div>
        <div ref={ref} className="time-track">
          {width > 0 && <Ruler track={track} delaySeconds={frame.delaySeconds} />}
        </div>
        <div className="time-side">
          <NumberField
            label="Delay"
            unit="s"
            value={frame.delaySeconds}
            min={0}
            max={36000}
            step={1}
            onChange={(seconds) => edit((setup) => setFrameNumber(setup, place, 'delaySeconds', seconds))}
          />
          <span className="time-words quiet">opens at {minutesText(order.startSeconds)}</span>
        </div>
      </div>
      {frame.passes.length === 0 && frame.purpose !== 'sky' && (
        <Empty lacks="lamp">Each lamp of this frame has a line here with its time on; none is in it yet.</Empty>
      )}
      {width > 0 &&
        frame.passes.map((pass) => (
          <PassLane key={pass.id} schemeId={schemeId} frame={frame} pass={pass} track={track} fit={fitOf(pass)} />
        ))}
    </section>
  );
};
