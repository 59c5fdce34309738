import { type EvenDose, evenDose } from '../../../core/passes/even-dose.ts';
import { firstStroke } from '../../../core/passes/stroke.ts';
import type { Scheme, Setup, Waypoint } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { EditRefused } from './edits/edit-refused.ts';
import type { PassPlace } from './edits/within.ts';

/** Works out the way and times of a moving pass for an even dose at its aims; null where there is no such pass. */
export const evenedPass = (setup: Setup, { schemeId, frameId, passId }: PassPlace): EvenDose | null => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId) as Scheme;
  const frame = scheme.frames.find(({ id }) => id === frameId);
  const pass = frame?.passes.find(({ id }) => id === passId);
  const world = buildWorld(setup, scheme);
  const source = world.frames
    .find(({ id }) => id === frameId)
    ?.lights.find(({ id, source }) => id === passId && source.kind === 'lamp')?.source;
  if (!pass || source?.kind !== 'lamp' || pass.waypoints.length < 2) return null;
  const { stage, view } = world;
  return evenDose({ stage, eye: view.position, emitter: source.emitter, waypoints: pass.waypoints }, firstStroke(pass));
};

/** The waypoints of an even dose, or the sentence why there is none. */
export const evenedWaypoints = (even: EvenDose | null): readonly Waypoint[] => {
  if (!even) throw new EditRefused('The lamp does not move; there is no dwell to even.');
  if (even.kind === 'even') return even.waypoints;
  throw new EditRefused(
    'No dwell evens this: at none of its aims does the camera see anything that the lamp lights on its way. Move the aims, or the lamp.',
  );
};
