import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { pointerPlace } from '../picture/use-svg-drag.ts';
import { lengthWords } from '../ui/lengths.ts';
import { fromPlan, type PlanView, planHalf, toPlan } from '../ui/plan-view.ts';
import { nudgedPosition } from './nudge.ts';
import { type Pointing, placeWords } from './pointing.ts';

/** The cross stays on the drawing while it is dragged: beyond it the plan would shrink under the hand. */
const withinDrawing = (v: number) => Math.min(Math.max(v, -planHalf * 0.98), planHalf * 0.98);
const toCentimetres = (metres: number) => Math.round(metres * 100) / 100;

/** The true place as a ring, and how far off the cross was. */
const Truth = ({ view, at, truth }: { view: PlanView; at: GroundPoint | null; truth: GroundPoint }) => {
  const [tx, ty] = toPlan(view, truth);
  const [x, y] = at ? toPlan(view, at) : [tx, ty];
  const metres = at ? Math.hypot(at[0] - truth[0], at[1] - truth[1]) : null;
  // beyond the ring as seen from the cross, and inside the drawing
  const away = Math.max(Math.hypot(tx - x, ty - y), 1e-6);
  const held = (v: number, margin: number) => Math.min(Math.max(v, margin - planHalf), planHalf - margin);
  const wx = held(tx + ((tx - x) / away) * 42, 40);
  const wy = held(ty + ((ty - y) / away) * 26 + 4, 14);
  return (
    <g className="pointed-truth">
      <path d={`M${x} ${y}L${tx} ${ty}`} />
      <circle cx={tx} cy={ty} r={9} />
      <text x={wx} y={wy} className="mark-text hour">
        {metres === null ? 'here' : `${lengthWords(metres, 1)} off`}
      </text>
    </g>
  );
};

/** Lets the user point at a place on the ground, over the plan: press or drag, or move the cross by keys. */
export const PlanPointer = ({ view, at, truth, onPoint }: Pointing & { view: PlanView }) => {
  const isDown = useRef(false);
  const isAsking = truth === null;
  const point = (event: PointerEvent<SVGGElement>) => {
    const svg = event.currentTarget.ownerSVGElement;
    if (!svg) return;
    const [x, y] = pointerPlace(svg, event);
    const [east, north] = fromPlan(view, [withinDrawing(x), withinDrawing(y)]);
    onPoint([toCentimetres(east), toCentimetres(north)]);
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0 || !isAsking) return;
    isDown.current = true;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    point(event);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (!isAsking || !event.key.startsWith('Arrow')) return;
    const [east, north] = at ?? view.centre;
    const next = nudgedPosition(event, view, [east, north, 0], null);
    if (!next) return;
    event.preventDefault();
    onPoint([next[0], next[1]]);
  };
  const [x, y] = toPlan(view, at ?? view.centre);
  const where = at ? ` Cross at ${placeWords(view, at)}.` : '';
  return (
    <g
      className={isAsking ? 'pointer pointer-asking' : 'pointer'}
      role="button"
      aria-disabled={!isAsking}
      tabIndex={isAsking ? 0 : -1}
      aria-label={`Point where the shadow’s tip falls. Arrow keys move the cross.${where}`}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={(event) => isDown.current && point(event)}
      onPointerUp={() => {
        isDown.current = false;
      }}
      onPointerCancel={() => {
        isDown.current = false;
      }}
    >
      <rect x={-planHalf} y={-planHalf} width={2 * planHalf} height={2 * planHalf} />
      {truth && <Truth view={view} at={at} truth={truth} />}
      {(at || isAsking) && (
        <path
          d="M-10 -10L10 10M-10 10L10 -10"
          transform={`translate(${x} ${y})`}
          className={at ? 'pointed' : 'pointed pointed-nowhere'}
        />
      )}
    </g>
  );
};
