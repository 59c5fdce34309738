import type { Pass } from '../../../core/setup/schema/setup.ts';
import { shutterText } from '../ui/words.ts';
import { type BarMoves, BarPart } from './BarPart.tsx';
import { clockSeconds, type Track } from './track.ts';
import { wayMarks } from './way-marks.ts';

/** Where the bar stands in its lane, pixels. */
const [top, height] = [15, 20] as const;
/** How far a hand may be off an end. */
const gripPixels = 20;
/** Room that the seconds need. */
const wordPixels = 46;

interface PassBarProps extends BarMoves {
  readonly track: Track;
  readonly pass: Pass;
  /** CSS colour of its light. */
  readonly light: string;
  readonly isSelected: boolean;
}

/** When a lamp is on, as a bar on its frame's clock: all of it, or either end, is dragged or moved by keys. */
export const PassBar = ({ track, pass, light, isSelected, onSelect, onMove }: PassBarProps) => {
  const { name, on, off, held } = pass;
  const [start, end] = [track.x(on), track.x(off)];
  const marks = wayMarks(pass);
  const words = `${shutterText(off - on)} s`;
  const fits = end - start > wordPixels;
  const isRoomAfter = end + wordPixels < track.width;
  const bar = (
    <>
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
    </>
  );
  const grip = (edge: 'on' | 'off') => {
    const x = edge === 'on' ? start : end;
    const inside = Math.min((end - start) / 3, 8);
    const children = (
      <>
        <rect
          className="time-target"
          x={edge === 'on' ? x - gripPixels : x - inside}
          y={top - 13}
          width={gripPixels + inside}
          height={height + 18}
        />
        <path d={`M${x} ${top - 3}v${height + 6}`} />
      </>
    );
    return {
      children,
      className: 'time-grip',
      'aria-label': `${name} ${edge}`,
      'aria-valuemin': edge === 'on' ? 0 : on,
      'aria-valuemax': edge === 'on' ? off : track.seconds,
      'aria-valuenow': pass[edge],
      'aria-valuetext': `${clockSeconds(pass[edge])} s after the shutter opens`,
    };
  };
  const whole = {
    children: bar,
    className: 'time-bar',
    'aria-label': `${name}, ${words}, on from ${clockSeconds(on)} to ${clockSeconds(off)} s. Arrow keys move it.`,
    'aria-pressed': isSelected,
  };
  return (
    <g className={isSelected ? 'time-pass time-pass-selected' : 'time-pass'}>
      <BarPart {...{ track, pass, onSelect, onMove }} edge="whole" attributes={whole} />
      <BarPart {...{ track, pass, onSelect, onMove }} edge="on" attributes={grip('on')} />
      <BarPart {...{ track, pass, onSelect, onMove }} edge="off" attributes={grip('off')} />
    </g>
  );
};
