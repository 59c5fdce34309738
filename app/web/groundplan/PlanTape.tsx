import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Position } from '../../../core/setup/schema/setup.ts';
import { pointerPlace } from '../picture/use-svg-drag.ts';
import { useApp } from '../state/app-store.ts';
import { type Tape, useSession } from '../state/session.ts';
import { fromPlan, type PlanView, planHalf, toPlan } from '../ui/plan-view.ts';
import { shortTapeWords, tapeWords } from '../ui/tape-words.ts';
import { nudgedPosition } from './nudge.ts';
import { toStep } from './to-step.ts';

/** A pointer nearer than this to an end takes hold of it. */
const holdUnits = 24;

/** The measuring tape on the plan: press and drag from one place to the other; ends can be taken up again, by hand and by keys. */
export const PlanTape = ({ view, tape }: { view: PlanView; tape: Tape }) => {
  const paceMetres = useApp((state) => state.history.present.walking.paceMetres);
  const held = useRef<'from' | 'to' | null>(null);
  const put = (part: Partial<Tape>) => {
    const { tape: now, set } = useSession.getState();
    if (now) set({ tape: { ...now, ...part } });
  };
  const placeOf = (event: PointerEvent<SVGGElement>): { readonly at: GroundPoint; readonly place: Position } => {
    const at = pointerPlace(event.currentTarget.ownerSVGElement as SVGSVGElement, event);
    const [east, north] = fromPlan(view, at).map((v) => toStep(v, event.shiftKey ? 0.1 : 0.01)) as [number, number];
    return { at, place: [east, north, 0] };
  };
  const isNear = (end: Position | null, [x, y]: GroundPoint) => {
    if (!end) return false;
    const [ex, ey] = toPlan(view, end);
    return Math.hypot(ex - x, ey - y) < holdUnits;
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    const { at, place } = placeOf(event);
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    held.current = isNear(tape.from, at) && tape.to ? 'from' : 'to';
    if (isNear(tape.from, at) || isNear(tape.to, at)) put({ [held.current]: place });
    else put({ from: place, to: place });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const from = tape.from ?? ([view.centre[0], view.centre[1], 0] as Position);
    const next = nudgedPosition(event, view, tape.to ?? from, null);
    if (!next) return;
    event.preventDefault();
    put({ from, to: next });
  };
  const [a, b] = [tape.from, tape.to].map((end) => end && toPlan(view, end));
  const words = tapeWords(tape, paceMetres);
  const middle = a && b ? ([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const) : null;
  const keep = (v: number) => Math.min(Math.max(v, 90 - planHalf), planHalf - 90);
  return (
    <g
      className="tape"
      role="button"
      tabIndex={0}
      aria-label={`Measuring tape. Drag from one place to the other, or move its end by arrow keys. ${words}`}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={(event) => held.current && put({ [held.current]: placeOf(event).place })}
      onPointerUp={() => {
        held.current = null;
      }}
      onPointerCancel={() => {
        held.current = null;
      }}
    >
      <rect className="tape-area" x={-planHalf} y={-planHalf} width={2 * planHalf} height={2 * planHalf} />
      {a && b && <path d={`M${a[0]} ${a[1]}L${b[0]} ${b[1]}`} className="tape-line" />}
      {[a, b].map(
        (end, i) => end && <circle className="tape-end" key={i === 0 ? 'from' : 'to'} cx={end[0]} cy={end[1]} r={5} />,
      )}
      {middle && (
        <text x={keep(middle[0])} y={middle[1] - 10} className="mark-text hour">
          {shortTapeWords(tape, paceMetres)}
        </text>
      )}
    </g>
  );
};
