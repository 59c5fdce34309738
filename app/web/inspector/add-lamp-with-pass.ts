import type { BagLamp } from '../../../core/bag/bag-file.ts';
import { isInFrame } from '../../../core/camera/camera-view.ts';
import { anyHit } from '../../../core/geometry/cast-ray.ts';
import { dot, length, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { placeAtClock } from '../../../core/readings/direction.ts';
import { targetSurface } from '../../../core/readings/target-reading.ts';
import type { Frame, Lamp, Position, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld, type World } from '../../../core/world/world.ts';
import { addLampFromBag } from '../state/edits/bag-edits.ts';
import { addPass } from '../state/edits/frame-edits.ts';
import { addLamp } from '../state/edits/lamp-edits.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { freshId, withinWorld } from '../state/edits/within.ts';
import { newLamps } from './new-lamps.ts';

/** Places tried for a new lamp, in this order: beside the subject first, then farther out and round. */
const tries = [5, 7, 9, 12].flatMap((metres) => [3, 9, 2, 10, 4, 8].map((clock) => ({ clock, metres })));

/** Whether a lamp there would light the surface that the camera sees at its aim. */
const reaches = ({ stage, view }: World, aim: Vec3, place: Vec3): boolean => {
  const surface = targetSurface(stage, view.position, aim);
  if (!surface) return true;
  const way = sub(place, surface.place);
  return dot(way, surface.normal) > 0 && !anyHit(stage.tree, surface.shadowOrigin, normalize(way), length(way));
};

/** A place at knee height that lights the subject, that the lens does not see, and where no other lamp stands. */
const freePlace = (setup: Setup, scheme: Scheme): Position => {
  const world = buildWorld(setup, scheme);
  const { position: camera, aim } = cameraOf(setup, scheme.id);
  const taken = scheme.frames.flatMap(({ passes }) =>
    passes.flatMap(({ waypoints }) => waypoints.map((w) => w.position)),
  );
  const places = tries.map(({ clock, metres }) =>
    documentFromWorld(placeAtClock(worldFromDocument(aim), worldFromDocument(camera), clock, metres, 0.5)),
  );
  const isFree = (place: Position) => taken.every(([e, n]) => Math.hypot(e - place[0], n - place[1]) > 0.8);
  const free = places.find((place) => {
    const there = worldFromDocument(place);
    return isFree(place) && !isInFrame(world.view, there) && reaches(world, worldFromDocument(aim), there);
  });
  // beside a subject at the edge of the world there may be no more room
  return withinWorld((free ?? (places[0] as Position)).map((v) => Math.round(v * 100) / 100) as Position);
};

const newSeconds = 5;

/** When a new lamp goes on: after those in the same hand, where that leaves it time enough, else with the shutter. */
const startOf = ({ passes, seconds }: Frame): number => {
  const last = Math.max(0, ...passes.filter(({ held }) => held === 'hand').map(({ off }) => off));
  return last + newSeconds <= seconds ? last : 0;
};

/** A new lamp of a kind: its name says which one of them it is. */
const addNew = (setup: Setup, kind: Lamp['kind']): { setup: Setup; lampId: string; name: string } => {
  const count = setup.lamps.filter((lamp) => lamp.kind === kind).length;
  const name = `${newLamps[kind].name}${count > 0 ? ` ${count + 1}` : ''}`;
  return { ...addLamp(setup, { ...newLamps[kind], name }), name };
};

/** A new lamp of a kind, or a copy of one from the bag, with a pass, aimed at what the camera looks at. */
export const addLampWithPass = (
  setup: Setup,
  scheme: Scheme,
  frame: Frame,
  wanted: Lamp['kind'] | BagLamp,
): { setup: Setup; passId: string } => {
  const added =
    typeof wanted === 'string' ? addNew(setup, wanted) : { ...addLampFromBag(setup, wanted), name: wanted.lamp.name };
  const { setup: withLamp, lampId, name } = added;
  const passId = freshId(frame.passes, typeof wanted === 'string' ? wanted : wanted.lamp.kind);
  const on = startOf(frame);
  const pass = {
    id: passId,
    name,
    lampId,
    held: 'hand' as const,
    on,
    off: Math.min(on + newSeconds, frame.seconds),
    levelPercent: 100,
    gels: [],
    cloth: null,
    snootDegrees: null,
    strokes: 1,
    dwell: 'typed' as const,
    waypoints: [{ time: 0, position: freePlace(setup, scheme), aim: cameraOf(setup, scheme.id).aim }],
  };
  return { setup: addPass(withLamp, { schemeId: scheme.id, frameId: frame.id }, pass), passId };
};
