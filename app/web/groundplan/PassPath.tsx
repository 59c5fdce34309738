import { pathKind } from '../../../core/passes/path-legs.ts';
import type { Frame, Lamp, Pass, Position } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { aimWaypoint, moveWaypoint } from '../state/edits/waypoint-edits.ts';
import { useSession } from '../state/session.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { openPath } from '../ui/open-path.ts';
import { spacedPlaces } from '../ui/path-ticks.ts';
import { type PlanView, toPlan } from '../ui/plan-view.ts';
import { PlanMark } from './PlanMark.tsx';

interface PassPathProps {
  readonly view: PlanView;
  readonly schemeId: string;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly isSelected: boolean;
}

/** Numbers that are nearer to each other than this are not read, in drawing units. */
const tickUnits = 22;

/** The way of a moving lamp as a solid line, that of its aim dotted; of the selected pass with numbered waypoints to drag. */
export const PassPath = ({ view, schemeId, frame, pass, lamp, isSelected }: PassPathProps) => {
  const { edit, select } = useApp.getState();
  const kind = pathKind(pass.waypoints);
  if (kind === 'still') return null;
  const place = { schemeId, frameId: frame.id, passId: pass.id };
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  const onPlan = (of: 'position' | 'aim') => pass.waypoints.map((waypoint) => toPlan(view, waypoint[of]));
  const [lampWay, aimWay] = [onPlan('position'), onPlan('aim')];
  const marks = (of: 'position' | 'aim') => {
    const move = of === 'position' ? moveWaypoint : aimWaypoint;
    const numbered = of === 'position' || kind === 'sweep';
    return spacedPlaces(of === 'position' ? lampWay : aimWay, tickUnits).flatMap((i) => {
      // the first is the lamp’s own disc or cross, which carries the whole way along
      if (i === 0) return [];
      const at = pass.waypoints[i]?.[of] as Position;
      const what = of === 'position' ? `Waypoint ${i + 1}` : `Aim at waypoint ${i + 1}`;
      return (
        <PlanMark
          key={`${of}${i}`}
          view={view}
          position={at}
          aim={of === 'position' ? (pass.waypoints[i]?.aim as Position) : null}
          targetRadius={14}
          label={`${what} of ${pass.name}, at ${pass.waypoints[i]?.time.toFixed(2)} s. Arrow keys move it, Page Up and Page Down lift it.`}
          isSelected={false}
          onSelect={() => {
            select({ kind: 'pass', frameId: frame.id, passId: pass.id });
            useSession.getState().set({ waypoint: i });
          }}
          onMove={(to, run) => edit((s) => move(s, place, i, to), run)}
        >
          {of === 'position' ? <circle r={4.5} className="path-tick" /> : <path d="M-4 0H4M0 -4V4" className="aim" />}
          {numbered && (
            <text y={-8} className="mark-text hour path-number">
              {i + 1}
            </text>
          )}
        </PlanMark>
      );
    });
  };
  return (
    <g className={isSelected ? 'pass-path' : 'pass-path pass-path-faint'} style={{ color: colour }}>
      {kind === 'walk' && <path d={openPath(lampWay)} className="path-lamp" aria-hidden="true" />}
      <path d={openPath(aimWay)} className="path-aim" aria-hidden="true" />
      {isSelected && marks('aim')}
      {isSelected && kind === 'walk' && marks('position')}
    </g>
  );
};
