import { type PointerEvent, useEffect, useRef, useState } from 'react';
import { aimsInPicture } from '../../../core/passes/aims-in-picture.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { linePath } from '../picture/line-path.ts';
import { pointerPlace } from '../picture/use-svg-drag.ts';
import { useApp } from '../state/app-store.ts';
import { paintSweep } from '../state/edits/path-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { useSession } from '../state/session.ts';

type Place = readonly [x: number, y: number];

/** Places of a drag that are nearer than this say nothing new, as a share of the picture's width. */
const leastStep = 0.004;
const width = 1000;

interface SweepToolProps {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly place: PassPlace;
}

/** Lies over the picture while a sweep is painted: a drag becomes the way of the lamp's aim over what the camera sees there. */
export const SweepTool = ({ setup, scheme, place }: SweepToolProps) => {
  const drawn = useRef<Place[] | null>(null);
  const [line, setLine] = useState<readonly Place[]>([]);
  const { edit, tell } = useApp.getState();
  const { widthMm, heightMm } = (scheme.camera ?? setup.camera).sensor;
  const height = Math.round((width * heightMm) / widthMm);
  const field = useRef<SVGSVGElement>(null);
  useEffect(() => {
    // on a phone the button lies far under the picture
    field.current?.scrollIntoView({ block: 'nearest' });
    const leave = () => useSession.getState().set({ paints: null });
    const onKeyDown = (event: KeyboardEvent) => event.key === 'Escape' && leave();
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
  const placeOf = (event: PointerEvent<SVGSVGElement>): Place => {
    const [x, y] = pointerPlace(event.currentTarget, event);
    const within = (v: number) => Math.min(Math.max(v, 0), 1);
    return [within(x / width), within(y / height)];
  };
  const finish = () => {
    const places = drawn.current ?? [];
    drawn.current = null;
    setLine([]);
    const { stage, view } = buildWorld(setup, scheme);
    const aims = aimsInPicture(stage, view, places);
    if (!aims) {
      tell({ tone: 'problem', text: 'That line meets nothing that a lamp could light. Drag over the subject.' });
      return;
    }
    edit((s) => paintSweep(s, place, aims.map(documentFromWorld)));
    useSession.getState().set({ paints: null, waypoint: null });
  };
  return (
    <svg
      ref={field}
      className="sweep-tool"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="Drag over what the lamp should sweep. By keyboard, add waypoints in the lamp’s slip. Escape leaves."
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        drawn.current = [placeOf(event)];
        setLine(drawn.current);
      }}
      onPointerMove={(event) => {
        if (!drawn.current) return;
        const [x, y] = placeOf(event);
        const [lx, ly] = drawn.current.at(-1) as Place;
        if (Math.hypot(x - lx, y - ly) < leastStep) return;
        drawn.current = [...drawn.current, [x, y]];
        setLine(drawn.current);
      }}
      onPointerUp={() => drawn.current && finish()}
      onPointerCancel={() => {
        drawn.current = null;
        setLine([]);
      }}
    >
      <title>Paint the sweep</title>
      {line.length > 1 && (
        <>
          <path className="sweep-line-case" d={linePath(line.flat(), [width, height])} />
          <path className="sweep-line" d={linePath(line.flat(), [width, height])} />
        </>
      )}
    </svg>
  );
};
