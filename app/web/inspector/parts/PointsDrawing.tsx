import { type KeyboardEvent, useRef } from 'react';
import { useSvgDrag } from '../../picture/use-svg-drag.ts';
import { useApp } from '../../state/app-store.ts';
import { lengthWords } from '../../ui/lengths.ts';
import { type DocumentPoint, extentOf, type Point, roundedPoint, stepOf } from './points.ts';

/** Half the longer side of the drawing, and its margin, in its own units. */
const [half, margin] = [90, 22];

interface Frame {
  readonly middle: Point;
  readonly unitsPerMetre: number;
}

const frameOf = (points: readonly Point[]): Frame => {
  const middle = ([0, 1] as const).map((axis) => {
    const values = points.map((p) => p[axis]);
    return (Math.min(...values) + Math.max(...values)) / 2;
  }) as [number, number];
  return { middle, unitsPerMetre: (2 * half) / extentOf(points) };
};

interface HandleProps {
  readonly place: Point;
  readonly label: string;
  readonly isSelected: boolean;
  readonly onSelect: () => void;
  readonly onDrag: (place: Point) => void;
  readonly onStep: (across: number, up: number) => void;
}

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const Handle = ({ place: [x, y], label, isSelected, onSelect, onDrag, onStep }: HandleProps) => {
  const drag = useSvgDrag({ at: [x, y], onStart: onSelect, move: onDrag });
  const onKeyDown = (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    if (!arrow) return;
    event.preventDefault();
    const times = event.shiftKey ? 10 : 1;
    onStep(arrow[0] * times, arrow[1] * times);
  };
  return (
    <g
      className="point"
      transform={`translate(${x} ${y})`}
      role="button"
      tabIndex={0}
      aria-label={label}
      aria-pressed={isSelected}
      onFocus={onSelect}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <circle r={14} className="point-target" />
      <circle r={isSelected ? 5 : 3.5} />
    </g>
  );
};

interface PointsDrawingProps {
  readonly points: readonly Point[];
  readonly isClosed: boolean;
  /** What the two numbers of a point are, for those who hear the drawing. */
  readonly axes: readonly [string, string];
  readonly selected: number;
  readonly onSelect: (index: number) => void;
  /** `run` is set for steps by key. */
  readonly onMove: (index: number, to: DocumentPoint, run?: string) => void;
  /** Whether the half beyond the axis is drawn too, as of a turned shape. */
  readonly isTurned?: boolean;
}

/** Points joined by a line; each can be dragged, or moved by arrow keys (Shift: ten steps). */
export const PointsDrawing = (props: PointsDrawingProps) => {
  const { points, isClosed, axes, selected, onSelect, onMove, isTurned = false } = props;
  const isDragging = useApp((state) => state.history.gestureStart !== null);
  const kept = useRef<Frame | null>(null);
  const mirrored = points.map(([x, y]): Point => [-x, y]);
  // the drawing holds still under a hand that drags
  if (!kept.current || !isDragging) kept.current = frameOf(isTurned ? [...points, ...mirrored] : points);
  const { middle, unitsPerMetre } = kept.current;
  const extent = extentOf(points);
  const toDrawing = ([x, y]: Point): Point => [(x - middle[0]) * unitsPerMetre, -(y - middle[1]) * unitsPerMetre];
  const fromDrawing = ([x, y]: Point): DocumentPoint =>
    roundedPoint([x / unitsPerMetre + middle[0], -y / unitsPerMetre + middle[1]], extent);
  const pathOf = (line: readonly Point[]) =>
    `M${line.map((p) => toDrawing(p).join(' ')).join('L')}${isClosed ? 'Z' : ''}`;
  const size = half + margin;
  return (
    <svg
      className="drawing points-drawing"
      viewBox={`${-size} ${-size} ${2 * size} ${2 * size}`}
      role="group"
      aria-label={`Drawing of ${points.length} points. Drag a point, or move it by arrow keys.`}
    >
      {isTurned && <path d={pathOf(mirrored)} className="drawing-faint" />}
      <path d={pathOf(points)} />
      {points.map((point, i) => (
        <Handle
          // biome-ignore lint/suspicious/noArrayIndexKey: points have no names of their own
          key={i}
          place={toDrawing(point)}
          label={`Point ${i + 1}: ${axes[0]} ${lengthWords(point[0], 2)}, ${axes[1]} ${lengthWords(point[1], 2)}`}
          isSelected={i === selected}
          onSelect={() => onSelect(i)}
          onDrag={(place) => onMove(i, fromDrawing(place))}
          onStep={(across, up) => {
            const step = stepOf(extent);
            onMove(i, roundedPoint([point[0] + across * step, point[1] + up * step], extent), `point ${i}`);
          }}
        />
      ))}
    </svg>
  );
};
