import { placeAtClock } from '../../../core/readings/direction.ts';
import type { Frame, Lamp, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import { useApp } from '../state/app-store.ts';
import { addPass } from '../state/edits/frame-edits.ts';
import { addLamp } from '../state/edits/lamp-edits.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { freshId } from '../state/edits/within.ts';
import { newLamps } from './new-lamps.ts';

/** A new lamp of a kind with a pass at three o'clock, five metres off, knee high, aimed at what the camera looks at. */
const addLampWithPass = (
  setup: Setup,
  scheme: Scheme,
  frame: Frame,
  kind: Lamp['kind'],
): { setup: Setup; passId: string } => {
  const { setup: withLamp, lampId } = addLamp(setup, newLamps[kind]);
  const camera = cameraOf(setup, scheme.id);
  const aim = worldFromDocument(camera.aim);
  const position = documentFromWorld(placeAtClock(aim, worldFromDocument(camera.position), 3, 5, 0.5));
  const passId = freshId(frame.passes, kind);
  const length = Math.min(5, frame.seconds);
  const pass = {
    id: passId,
    name: newLamps[kind].name,
    lampId,
    held: 'hand' as const,
    on: 0,
    off: length,
    levelPercent: 100,
    gels: [],
    waypoints: [{ time: 0, position, aim: camera.aim }],
  };
  return { setup: addPass(withLamp, { schemeId: scheme.id, frameId: frame.id }, pass), passId };
};

const kinds: readonly Lamp['kind'][] = ['torch', 'panel', 'lantern', 'tube'];

/** Puts another lamp into the frame. */
export const AddLamp = ({ setup, scheme, frame }: { setup: Setup; scheme: Scheme; frame: Frame }) => {
  const { edit, select } = useApp.getState();
  const isFull = setup.lamps.length >= 64 || frame.passes.length >= 64;
  const add = (kind: Lamp['kind']) => {
    const added = addLampWithPass(setup, scheme, frame, kind);
    edit(() => added.setup);
    select({ kind: 'pass', frameId: frame.id, passId: added.passId });
  };
  return (
    <div className="add-lamp" role="group" aria-label="Add a lamp">
      <span>Add a lamp:</span>
      {kinds.map((kind) => (
        <button key={kind} type="button" disabled={isFull} onClick={() => add(kind)}>
          {kind}
        </button>
      ))}
    </div>
  );
};
