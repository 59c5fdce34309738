import { lampDirection, placeAtClock } from '../../../core/readings/direction.ts';
import type { Frame, Lamp, Pass, Position } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import * as passes from '../state/edits/pass-edits.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { Choice } from '../ui/Choice.tsx';
import { MetresField } from '../ui/MetresField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { TextField } from '../ui/TextField.tsx';
import { shutterText } from '../ui/words.ts';
import { StandFields } from './StandFields.tsx';

interface PassFieldsProps {
  readonly place: PassPlace;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
}

const rounded = (p: Position): Position => p.map((v) => Math.round(v * 1000) / 1000) as Position;

/** Where the lamp stands in a pass, where it points, how long and how bright it is. */
export const PassFields = ({ place, frame, pass, lamp }: PassFieldsProps) => {
  const setup = useSetup();
  const { edit } = useApp.getState();
  const { position, aim } = pass.waypoints[0] as Pass['waypoints'][number];
  const [worldPosition, worldAim] = [worldFromDocument(position), worldFromDocument(aim)];
  const camera = worldFromDocument(cameraOf(setup, place.schemeId).position);
  const { clockHours } = lampDirection(worldAim, camera, worldPosition);
  const away = Math.hypot(position[0] - aim[0], position[1] - aim[1]);
  const move = (to: Position) => edit((s) => passes.movePass(s, place, rounded(to)));
  const stand = (hours: number, metres: number) =>
    move(documentFromWorld(placeAtClock(worldAim, camera, hours, metres, position[2])));
  return (
    <div className="fields">
      <StandFields
        clockHours={clockHours}
        levelMetres={away}
        heightMetres={position[2]}
        onStand={stand}
        onLift={(up) => move([position[0], position[1], up])}
      />
      <MetresField
        label="Aim height"
        value={aim[2]}
        onChange={(up) => edit((s) => passes.aimPass(s, place, [aim[0], aim[1], up]))}
      />
      <NumberField
        label="Count"
        format={shutterText}
        unit="s"
        value={pass.off - pass.on}
        min={0.01}
        max={frame.seconds}
        whyMost="the shutter is open no longer"
        step={1}
        onChange={(s) => edit((setup) => passes.setPassSeconds(setup, place, s))}
      />
      <NumberField
        label="Level"
        unit="%"
        value={pass.levelPercent}
        min={Math.min(lamp.lowestLevelPercent, pass.levelPercent)}
        max={100}
        digits={3}
        step={5}
        onChange={(level) => edit((s) => passes.setPassLevel(s, place, level))}
      />
      <Choice
        label="Lamp"
        value={pass.lampId}
        options={setup.lamps.map(({ id, name }) => [id, name] as const)}
        onChange={(id) => edit((s) => passes.setPassLamp(s, place, id))}
      />
      <Choice
        label="Held"
        value={pass.held}
        options={[
          ['hand', 'in the hand'],
          ['stand', 'on a stand'],
        ]}
        onChange={(held) => edit((s) => passes.setPassHeld(s, place, held === 'stand' ? 'stand' : 'hand'))}
      />
      <TextField
        label="Name of the pass"
        value={pass.name}
        onChange={(name) => edit((s) => passes.setPassName(s, place, name))}
      />
    </div>
  );
};
