import { type KeyboardEvent, type MouseEvent, type ReactNode, useRef } from 'react';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import { arrowStep } from '../picture/patch-moves.ts';

interface CrossPictureProps {
  /** What is seen in it, and what the cross is for. */
  readonly label: string;
  /** Where the cross stands, 0 to 1 each way; null = there is no picture yet to put it on. */
  readonly place: PicturePlace | null;
  /** Of the ring round it, as a share of the picture's width. */
  readonly radius: number;
  /** Width over height. */
  readonly aspect: number;
  readonly onPlace: (place: PicturePlace) => void;
  /** The picture itself. */
  readonly children: ReactNode;
}

const inside = (v: number): number => Math.min(Math.max(v, 0), 1);

const Cross = ({ place, radius, aspect }: { place: PicturePlace; radius: number; aspect: number }) => {
  const [x, y] = [place[0] * 1000, (place[1] * 1000) / aspect];
  const ring = Math.max(radius * 1000, 8);
  const arms = `M${x - ring - 22} ${y}H${x - ring}M${x + ring} ${y}H${x + ring + 22}M${x} ${y - ring - 22}V${y - ring}M${x} ${y + ring}V${y + ring + 22}`;
  return (
    <svg viewBox={`0 0 1000 ${1000 / aspect}`} aria-hidden="true">
      <circle className="shot-case" cx={x} cy={y} r={ring} />
      <path className="shot-case" d={arms} />
      <circle className="shot-line" cx={x} cy={y} r={ring} />
      <path className="shot-line" d={arms} />
    </svg>
  );
};

/** A picture with a cross on it: a press sets it, arrow keys move it. */
export const CrossPicture = ({ label, place, radius, aspect, onPlace, children }: CrossPictureProps) => {
  const ref = useRef<HTMLButtonElement>(null);
  const onClick = ({ clientX, clientY, detail }: MouseEvent) => {
    const box = ref.current?.getBoundingClientRect();
    // pressed by a key
    if (!box || detail === 0) return;
    onPlace([inside((clientX - box.left) / box.width), inside((clientY - box.top) / box.height)]);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = arrowStep(event);
    if (!step || !place) return;
    event.preventDefault();
    onPlace([inside(place[0] + step[0] / 2), inside(place[1] + step[1] / 2)]);
  };
  return (
    <button
      ref={ref}
      type="button"
      className="shot-picture"
      aria-label={`${label} Arrow keys move the cross.`}
      data-place={place ? `${place[0].toFixed(3)} ${place[1].toFixed(3)}` : undefined}
      disabled={!place}
      style={{ aspectRatio: aspect }}
      onClick={onClick}
      onKeyDown={onKeyDown}
    >
      {children}
      {place && <Cross place={place} radius={radius} aspect={aspect} />}
    </button>
  );
};
