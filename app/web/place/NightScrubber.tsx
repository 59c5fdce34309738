import { type KeyboardEvent, type PointerEvent, useId } from 'react';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { Night } from '../../../core/sky/night.ts';
import type { Span } from '../../../core/sky/night-spans.ts';
import { pointerPlace, useSvgDrag } from '../picture/use-svg-drag.ts';
import { useApp } from '../state/app-store.ts';
import { setLocalTime } from '../state/edits/place-and-hour-edits.ts';
import { useWidth } from '../ui/use-width.ts';
import { minutesOn, toMinute } from './clock-time.ts';
import { bandWord, coreUp, type LightBand, lightBands, upWords } from './night-bands.ts';
import { atX, hourTicks, type NightScale, xOf } from './night-scale.ts';

const rows = { hours: 14, light: 18, moon: 42, core: 60, end: 78 } as const;
const [lightHigh, barHigh] = [20, 14];
/** Room for the names of the rows. */
const left = 44;
/** Room that a word needs, pixels. */
const wordPixels = 46;
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

const Light = ({ scale, band, timeZone }: { scale: NightScale; band: LightBand; timeZone: string }) => {
  const [from, to] = [xOf(scale, band.startMilliseconds), xOf(scale, band.endMilliseconds)];
  return (
    <g className={`night-${band.kind}`}>
      <rect x={from} y={rows.light} width={to - from} height={lightHigh} />
      {to - from > wordPixels && (
        <text x={(from + to) / 2} y={rows.light + 14} textAnchor="middle">
          {bandWord(band, timeZone, to - from)}
        </text>
      )}
    </g>
  );
};

interface BarsProps {
  readonly scale: NightScale;
  readonly spans: readonly Span[];
  readonly y: number;
  readonly className: string;
  /** What stands in a bar, by its width in pixels. */
  readonly words: (span: Span, pixels: number) => string;
}

/** When something is up, as bars with a word in the widest. */
const Bars = ({ scale, spans, y, className, words }: BarsProps) => (
  <g className={className}>
    {spans.map((span) => {
      const [from, to] = [xOf(scale, span.startMilliseconds), xOf(scale, span.endMilliseconds)];
      return (
        <g key={span.startMilliseconds}>
          <rect x={from} y={y} width={to - from} height={barHigh} />
          <text x={(from + to) / 2} y={y + 11} textAnchor="middle">
            {words(span, to - from)}
          </text>
        </g>
      );
    })}
  </g>
);

const Patterns = () => (
  <defs>
    {(
      [
        ['civil', 9],
        ['nautical', 5.5],
        ['astronomical', 3.2],
      ] as const
    ).map(([kind, gap]) => (
      <pattern
        key={kind}
        id={`night-${kind}`}
        width={gap}
        height={gap}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d={`M0 0V${gap}`} />
      </pattern>
    ))}
    <pattern id="night-dots" width={5} height={5} patternUnits="userSpaceOnUse">
      <circle className="night-dot" cx={2.5} cy={2.5} r={0.9} />
    </pattern>
  </defs>
);

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
  const up = (span: Span, pixels: number) => upWords(span, night, timeZone, pixels);
  const upInDark = (_span: Span, pixels: number) => (pixels > 100 ? 'up in the dark' : '');
  const hours = hourTicks(scale, timeZone, scale.width < 420 ? 3 : 2);
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
          <Patterns />
          <g aria-hidden="true">
            {hours.map(({ at, hour }) => (
              <g key={at}>
                <path d={`M${xOf(scale, at)} ${rows.light - 3}V${rows.light}`} />
                <text x={xOf(scale, at)} y={rows.hours - 2} textAnchor="middle">
                  {hour}
                </text>
              </g>
            ))}
            <text x={0} y={rows.light + 14}>
              Sky
            </text>
            <text x={0} y={rows.moon + 11}>
              Moon
            </text>
            <text x={0} y={rows.core + 11}>
              Core
            </text>
            {lightBands(night).map((band) => (
              <Light key={band.startMilliseconds} scale={scale} band={band} timeZone={timeZone} />
            ))}
            <path
              className="night-line"
              d={`M${left} ${rows.moon + barHigh}h${scale.width}M${left} ${rows.core + barHigh}h${scale.width}`}
            />
            <Bars scale={scale} spans={night.moonUp} y={rows.moon} className="night-moon" words={up} />
            <Bars scale={scale} spans={coreUp(night)} y={rows.core} className="night-core" words={() => ''} />
            <Bars
              scale={scale}
              spans={night.core.upInDark}
              y={rows.core}
              className="night-core-dark"
              words={upInDark}
            />
          </g>
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
