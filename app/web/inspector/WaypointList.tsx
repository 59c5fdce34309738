import type { PathKind } from '../../../core/passes/path-legs.ts';
import { lampDirection } from '../../../core/readings/direction.ts';
import type { Pass, Waypoint } from '../../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../../core/units/body-height.ts';
import { clockText } from '../../../core/units/clock.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { addWaypoint, removeWaypoint } from '../state/edits/waypoint-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { useSession } from '../state/session.ts';
import { lengthWords } from '../ui/lengths.ts';
import { WaypointFields } from './WaypointFields.tsx';

interface WaypointListProps {
  readonly place: PassPlace;
  readonly pass: Pass;
  readonly kind: PathKind;
}

const coordinates = ([east, north]: Waypoint['aim']) =>
  `${Math.abs(east).toFixed(1)} ${east < 0 ? 'W' : 'E'}, ${Math.abs(north).toFixed(1)} ${north < 0 ? 'S' : 'N'}`;

/** The waypoints of a path in order; one of them is open. */
export const WaypointList = ({ place, pass, kind }: WaypointListProps) => {
  const setup = useSetup();
  const wanted = useSession((state) => state.waypoint);
  const { edit } = useApp.getState();
  const { set } = useSession.getState();
  const { waypoints } = pass;
  const open = wanted === null ? null : Math.min(wanted, waypoints.length - 1);
  const camera = worldFromDocument(cameraOf(setup, place.schemeId).position);
  const whereOf = ({ position, aim }: Waypoint): string => {
    if (kind === 'sweep') return `aim ${coordinates(aim)} · ${lengthWords(aim[2], 1)} up`;
    const { clockHours, distanceMetres } = lampDirection(worldFromDocument(aim), camera, worldFromDocument(position));
    return `${clockText(clockHours)} · ${lengthWords(distanceMetres, 1)} · ${bodyHeightWord(position[2])}`;
  };
  return (
    <ol className="waypoints" aria-label="Waypoints">
      {waypoints.map((waypoint, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: waypoints are known by their place on the way
        <li key={i}>
          <button
            type="button"
            className="waypoint-head"
            aria-expanded={open === i}
            onClick={() => set({ waypoint: open === i ? null : i })}
          >
            <span className="waypoint-number">{i + 1}</span>
            <span className="waypoint-time">{waypoint.time.toFixed(2)} s</span>
            <span>{whereOf(waypoint)}</span>
          </button>
          {open === i && (
            <div className="waypoint-open">
              <WaypointFields place={place} pass={pass} index={i} camera={camera} />
              <div className="actions">
                <button
                  type="button"
                  className="small"
                  onClick={() => {
                    edit((s) => addWaypoint(s, place, i));
                    set({ waypoint: i + 1 });
                  }}
                >
                  Add after it
                </button>
                <button
                  type="button"
                  className="small"
                  disabled={waypoints.length <= 2}
                  onClick={() => edit((s) => removeWaypoint(s, place, i))}
                >
                  Remove waypoint
                </button>
              </div>
            </div>
          )}
        </li>
      ))}
    </ol>
  );
};
