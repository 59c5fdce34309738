import { type KeyboardEvent, type PointerEvent, useId } from 'react';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { toMinute } from '../../../core/sky/clock-at.ts';
import type { Night } from '../../../core/sky/night.ts';
import { pointerPlace, useSvgDrag } from '../picture/use-svg-drag.ts';
import { useApp } from '../state/app-store.ts';
import { setLocalTime } from '../state/edits/place-and-hour-edits.ts';
import { useWidth } from '../ui/use-width.ts';
import { minutesOn } from './clock-time.ts';
import { NightDrawing } from './NightDrawing.tsx';
import { atX, type NightScale, nightLayout as rows, xOf } from './night-scale.ts';

/** A drag goes by steps of five minutes. */
const dragMinutes = 5;

const keySteps: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 60,
  PageDown: -60,
};

interface NightScrubberProps {
  readonly place: Setup['place'];
  readonly night: Night;
  readonly utcMilliseconds: number;
  /** What the hour is like, for who cannot see the drawing. */
  readonly words: string;
}

/** The night from noon to noon: how light it is, when the moon and the core are up, and the hour, which is dragged or stepped by keys. */
export const NightScrubber = ({ place, night, utcMilliseconds, words }: NightScrubberProps) => {
  const { timeZone, localTime } = place;
  const [ref, width] = useWidth<HTMLDivElement>();
  const help = useId();
  const { left } = rows;
  const scale: NightScale = { span: night, left, width: Math.max(width - left - 8, 1) };
  const clock = localTime.slice(11, 16);
  const set = (to: string | null, run?: string) => {
    if (to !== null) useApp.getState().edit((setup) => setLocalTime(setup, to), run);
  };
  const goTo = (x: number) => {
    const step = dragMinutes * 60_000;
    // the last step before noon still belongs to this night
    const at = Math.min(Math.round(atX(scale, x) / step) * step, night.endMilliseconds - 60_000);
    set(toMinute(Math.max(at, night.startMilliseconds + 60_000), timeZone));
  };
  const cursor = xOf(scale, utcMilliseconds);
  const drag = useSvgDrag({ at: [cursor, 0], move: (_place, _pressed, [x]) => goTo(x) });
  const onPointerDown = (event: PointerEvent<SVGElement>) => {
    drag.onPointerDown(event);
    const svg = event.currentTarget.ownerSVGElement;
    if (event.button !== 0 || !svg) return;
    goTo(pointerPlace(svg, event)[0]);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const minutes = keySteps[event.key];
    if (minutes === undefined) return;
    event.preventDefault();
    const times = event.shiftKey && Math.abs(minutes) === 1 ? 10 : 1;
    set(minutesOn(localTime, timeZone, minutes * times), 'hour');
  };
  return (
    <div ref={ref} className="night">
      {width > 0 && (
        <svg
          className="night-svg"
          viewBox={`0 0 ${width} ${rows.end}`}
          height={rows.end}
          role="group"
          aria-label="The night from noon to noon"
        >
          <NightDrawing scale={scale} night={night} timeZone={timeZone} />
          <g
            className="night-cursor"
            role="slider"
            tabIndex={0}
            aria-label="Hour"
            aria-describedby={help}
            aria-valuemin={0}
            aria-valuemax={Math.round((night.endMilliseconds - night.startMilliseconds) / 60_000)}
            aria-valuenow={Math.round((utcMilliseconds - night.startMilliseconds) / 60_000)}
            aria-valuetext={`${clock}, ${words}`}
            onKeyDown={onKeyDown}
            {...drag}
            onPointerDown={onPointerDown}
          >
            <rect className="night-target" x={left - 8} y={0} width={scale.width + 16} height={rows.end} />
            <path d={`M${cursor} ${rows.light - 4}V${rows.end}`} />
            <path className="night-handle" d={`M${cursor - 6} ${rows.light - 12}h12v5l-6 7l-6 -7Z`} />
          </g>
        </svg>
      )}
      <p id={help} className="quiet night-help">
        Drag, or arrow keys: a minute; Shift ten; Page keys an hour.
      </p>
    </div>
  );
};
