import { isInFrame } from '../../../core/camera/camera-view.ts';
import { placeAtClock } from '../../../core/readings/direction.ts';
import type { Frame, Lamp, Position, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { useApp } from '../state/app-store.ts';
import { addPass } from '../state/edits/frame-edits.ts';
import { addLamp } from '../state/edits/lamp-edits.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { freshId } from '../state/edits/within.ts';
import { newLamps } from './new-lamps.ts';

/** Places tried for a new lamp, in this order: beside the subject first, then farther out and round. */
const tries = [5, 7, 9, 12].flatMap((metres) => [3, 9, 2, 10, 4, 8].map((clock) => ({ clock, metres })));

/** A place at knee height that the lens does not see and where no other lamp stands. */
const freePlace = (setup: Setup, scheme: Scheme): Position => {
  const { view } = buildWorld(setup, scheme);
  const { position: camera, aim } = cameraOf(setup, scheme.id);
  const taken = scheme.frames.flatMap(({ passes }) =>
    passes.flatMap(({ waypoints }) => waypoints.map((w) => w.position)),
  );
  const places = tries.map(({ clock, metres }) =>
    documentFromWorld(placeAtClock(worldFromDocument(aim), worldFromDocument(camera), clock, metres, 0.5)),
  );
  const isFree = (place: Position) => taken.every(([e, n]) => Math.hypot(e - place[0], n - place[1]) > 0.8);
  const free = places.find((place) => isFree(place) && !isInFrame(view, worldFromDocument(place)));
  return (free ?? (places[0] as Position)).map((v) => Math.round(v * 100) / 100) as Position;
};

/** A new lamp of a kind with a pass, aimed at what the camera looks at. */
const addLampWithPass = (
  setup: Setup,
  scheme: Scheme,
  frame: Frame,
  kind: Lamp['kind'],
): { setup: Setup; passId: string } => {
  const count = setup.lamps.filter((lamp) => lamp.kind === kind).length;
  const name = `${newLamps[kind].name}${count > 0 ? ` ${count + 1}` : ''}`;
  const { setup: withLamp, lampId } = addLamp(setup, { ...newLamps[kind], name });
  const passId = freshId(frame.passes, kind);
  const pass = {
    id: passId,
    name,
    lampId,
    held: 'hand' as const,
    on: 0,
    off: Math.min(5, frame.seconds),
    levelPercent: 100,
    gels: [],
    waypoints: [{ time: 0, position: freePlace(setup, scheme), aim: cameraOf(setup, scheme.id).aim }],
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
    // the strip it makes is far above the button on a phone
    requestAnimationFrame(() => document.querySelector('.slip-open')?.scrollIntoView({ block: 'nearest' }));
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
