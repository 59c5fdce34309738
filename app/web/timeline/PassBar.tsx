import type { KeyboardEvent } from 'react';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import { type DragHandlers, useSvgDrag } from '../picture/use-svg-drag.ts';
import type { PassEdge } from '../state/edits/pass-times.ts';
import { shutterText } from '../ui/words.ts';
import { clockSeconds, dragStepSeconds, snapped, type Track } from './track.ts';
import { wayMarks } from './way-marks.ts';

/** Where the bar stands in its lane, pixels. */
const [top, height] = [15, 20] as const;
/** How far a hand may be off an end. */
const gripPixels = 14;
/** Room that the seconds need. */
const wordPixels = 46;

interface PassBarProps {
  readonly track: Track;
  readonly pass: Pass;
  /** CSS colour of its light. */
  readonly light: string;
  readonly isSelected: boolean;
  readonly onSelect: () => void;
  /** `run` is set for steps by key: they belong together while the key is held. */
  readonly onMove: (edge: PassEdge, seconds: number, run?: string) => void;
}

const arrows: Readonly<Record<string, 1 | -1>> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 };

/** When a lamp is on, as a bar on its frame's clock: all of it, or either end, is dragged or moved by keys. */
export const PassBar = ({ track, pass, light, isSelected, onSelect, onMove }: PassBarProps) => {
  const { name, on, off, held } = pass;
  const [start, end] = [track.x(on), track.x(off)];
  const inside = Math.min((end - start) / 3, 8);
  const drag = (edge: PassEdge, x: number): DragHandlers =>
    // biome-ignore lint/correctness/useHookAtTopLevel: called three times, always in this order
    useSvgDrag({
      at: [x, 0],
      onStart: onSelect,
      move: ([to], _pressed, _now, isFree) => onMove(edge, snapped(track.secondsAt(to), isFree)),
    });
  const onKeyDown = (edge: PassEdge, seconds: number) => (event: KeyboardEvent) => {
    const direction = arrows[event.key];
    if (event.key === 'Enter' || event.key === ' ') onSelect();
    else if (!direction) return;
    else {
      onSelect();
      onMove(edge, snapped(seconds + direction * dragStepSeconds * (event.shiftKey ? 10 : 1), true), `${edge} ${name}`);
    }
    event.preventDefault();
    event.stopPropagation();
  };
  const [whole, first, last] = [drag('whole', start), drag('on', start), drag('off', end)];
  const marks = wayMarks(pass);
  const words = `${shutterText(off - on)} s`;
  const fits = end - start > wordPixels;
  const isRoomAfter = end + wordPixels < track.width;
  const grip = (edge: 'on' | 'off', x: number, handlers: DragHandlers) => (
    <g
      className="time-grip"
      role="slider"
      tabIndex={0}
      aria-label={`${name} ${edge}`}
      aria-valuemin={edge === 'on' ? 0 : on}
      aria-valuemax={edge === 'on' ? off : track.seconds}
      aria-valuenow={edge === 'on' ? on : off}
      aria-valuetext={`${clockSeconds(edge === 'on' ? on : off)} s after the shutter opens`}
      onKeyDown={onKeyDown(edge, edge === 'on' ? on : off)}
      {...handlers}
    >
      <rect
        className="time-target"
        x={edge === 'on' ? x - gripPixels : x - inside}
        y={top - 6}
        width={gripPixels + inside}
        height={height + 10}
      />
      <path d={`M${x} ${top - 3}v${height + 6}`} />
    </g>
  );
  return (
    <g className={isSelected ? 'time-pass time-pass-selected' : 'time-pass'}>
      <g
        className="time-bar"
        role="button"
        tabIndex={0}
        aria-label={`${name}, ${words}, on from ${clockSeconds(on)} to ${clockSeconds(off)} s. Arrow keys move it.`}
        aria-pressed={isSelected}
        onKeyDown={onKeyDown('whole', on)}
        {...whole}
      >
        <rect x={start} y={top} width={end - start} height={height} />
        {held === 'stand' && (
          <rect x={start} y={top} width={end - start} height={height} className="time-stand" fill="url(#time-hatch)" />
        )}
        <rect x={start} y={top + height - 3} width={end - start} height={3} className="time-light" fill={light} />
        {marks.turns.map((time) => (
          <path key={time} d={`M${track.x(time)} ${top}v${height}`} />
        ))}
        {marks.waypoints.map((time) => (
          <path key={time} d={`M${track.x(time)} ${top}v4`} />
        ))}
        <text
          x={fits ? (start + end) / 2 : isRoomAfter ? end + 10 : start - 10}
          y={top + 13}
          textAnchor={fits ? 'middle' : isRoomAfter ? 'start' : 'end'}
        >
          {words}
        </text>
      </g>
      {grip('on', start, first)}
      {grip('off', end, last)}
    </g>
  );
};
