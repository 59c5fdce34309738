import type { Vec3 } from '../../../core/geometry/vec.ts';
import { firstStroke } from '../../../core/passes/stroke.ts';
import { lampDirection, placeAtClock } from '../../../core/readings/direction.ts';
import type { Pass, Position, Waypoint } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import { useApp } from '../state/app-store.ts';
import { aimWaypoint, moveWaypoint, timeWaypoint } from '../state/edits/waypoint-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { MetresField } from '../ui/MetresField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { StandFields } from './StandFields.tsx';

interface WaypointFieldsProps {
  readonly place: PassPlace;
  readonly pass: Pass;
  readonly index: number;
  /** World metres. */
  readonly camera: Vec3;
}

/** When the lamp is at a waypoint, where it is, and what it points at. */
export const WaypointFields = ({ place, pass, index, camera }: WaypointFieldsProps) => {
  const { edit } = useApp.getState();
  const { time, position, aim } = pass.waypoints[index] as Waypoint;
  const { on, off } = firstStroke(pass);
  const [worldPosition, worldAim] = [worldFromDocument(position), worldFromDocument(aim)];
  const { clockHours } = lampDirection(worldAim, camera, worldPosition);
  const away = Math.hypot(position[0] - aim[0], position[1] - aim[1]);
  const move = (to: Position) => edit((s) => moveWaypoint(s, place, index, to));
  const stand = (hours: number, metres: number) =>
    move(documentFromWorld(placeAtClock(worldAim, camera, hours, metres, position[2])));
  const turn = (axis: 0 | 1 | 2) => (to: number) =>
    edit((s) => aimWaypoint(s, place, index, aim.with(axis, to) as Position));
  const level = { min: -5000, max: 5000 };
  return (
    <div className="fields">
      <NumberField
        label="Time"
        unit="s"
        value={time}
        min={on}
        max={off}
        step={0.1}
        onChange={(seconds) => edit((s) => timeWaypoint(s, place, index, seconds))}
      />
      <StandFields
        clockHours={clockHours}
        levelMetres={away}
        heightMetres={position[2]}
        onStand={stand}
        onLift={(up) => move([position[0], position[1], up])}
      />
      <MetresField label="Aim, east" value={aim[0]} {...level} onChange={turn(0)} />
      <MetresField label="Aim, north" value={aim[1]} {...level} onChange={turn(1)} />
      <MetresField label="Aim, up" value={aim[2]} onChange={turn(2)} />
    </div>
  );
};
