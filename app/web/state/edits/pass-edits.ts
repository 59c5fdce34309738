import { litFrom } from '../../../../core/passes/lit-from.ts';
import type { Cloth, Gel, Pass, Position, Setup } from '../../../../core/setup/schema/setup.ts';
import { cutTo, longestName } from './cut-to.ts';
import { renamed } from './plain-name.ts';
import { areApart, changeFrame, changePass, freshId, type PassPlace, withinWorld } from './within.ts';

/** Edits of one pass: pure, each (setup, place, argument) -> setup. They keep every rule that `parseSetup` checks. */

const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
const moved = (p: Position, by: Position): Position => withinWorld([p[0] + by[0], p[1] + by[1], p[2] + by[2]]);

/** Moves the whole path so that its first waypoint stands at `position`; the aim stays. */
export const movePass = (setup: Setup, place: PassPlace, position: Position): Setup =>
  changePass(setup, place, (pass) => {
    const from = pass.waypoints[0]?.position as Position;
    const by: Position = [position[0] - from[0], position[1] - from[1], position[2] - from[2]];
    const waypoints = pass.waypoints.map((w) => ({ ...w, position: moved(w.position, by) }));
    return waypoints.every((w) => areApart(w.position, w.aim)) ? { ...pass, waypoints } : pass;
  });

/** Moves the aim of the whole path so that the first waypoint aims at `aim`. */
export const aimPass = (setup: Setup, place: PassPlace, aim: Position): Setup =>
  changePass(setup, place, (pass) => {
    const from = pass.waypoints[0]?.aim as Position;
    const by: Position = [aim[0] - from[0], aim[1] - from[1], aim[2] - from[2]];
    const waypoints = pass.waypoints.map((w) => ({ ...w, aim: moved(w.aim, by) }));
    return waypoints.every((w) => areApart(w.position, w.aim)) ? { ...pass, waypoints } : pass;
  });

/**
 * How long the lamp is on. The pass starts earlier, or is cut, where it would outlast the frame. A lamp that moves goes the
 * same way, faster or slower.
 */
export const setPassSeconds = (setup: Setup, place: PassPlace, seconds: number): Setup =>
  changeFrame(setup, place, (frame) => ({
    ...frame,
    passes: frame.passes.map((pass) => {
      if (pass.id !== place.passId) return pass;
      const length = clamp(seconds, 0.01, frame.seconds);
      const on = clamp(pass.on, 0, frame.seconds - length);
      // on + length may round to a hair past the frame's end
      return litFrom(pass, on, Math.min(on + length, frame.seconds));
    }),
  }));

export const setPassLevel = (setup: Setup, place: PassPlace, levelPercent: number): Setup =>
  changePass(setup, place, (pass) => ({ ...pass, levelPercent }));

/** Most gels of a pass. */
export const maxGels = 8;

/** The stack of gels; what is over eight is left out. */
export const setPassGels = (setup: Setup, place: PassPlace, gels: readonly Gel[]): Setup =>
  changePass(setup, place, (pass) => ({ ...pass, gels: gels.slice(0, maxGels) }));

/** Hangs cloth over the lamp. Cloth that costs nothing is none. */
export const setPassCloth = (setup: Setup, place: PassPlace, cloth: Cloth | null): Setup =>
  changePass(setup, place, (pass) => ({ ...pass, cloth: cloth && cloth.stops > 0 ? cloth : null }));

/** Full angle of a snoot; null for none. */
export const setPassSnoot = (setup: Setup, place: PassPlace, snootDegrees: number | null): Setup =>
  changePass(setup, place, (pass) => ({
    ...pass,
    snootDegrees: snootDegrees === null ? null : clamp(snootDegrees, 1, 180),
  }));

export const setPassName = (setup: Setup, place: PassPlace, name: string): Setup =>
  changePass(setup, place, (pass) => renamed(pass, name));

export const setPassHeld = (setup: Setup, place: PassPlace, held: Pass['held']): Setup =>
  changePass(setup, place, (pass) => ({ ...pass, held }));

export const setPassLamp = (setup: Setup, place: PassPlace, lampId: string): Setup =>
  changePass(setup, place, (pass) => ({ ...pass, lampId }));

/** A copy of a pass beside it, a metre to the east. */
export const duplicatePass = (setup: Setup, place: PassPlace): Setup =>
  changeFrame(setup, place, (frame) => {
    const original = frame.passes.find(({ id }) => id === place.passId);
    if (!original || frame.passes.length >= 64) return frame;
    const waypoints = original.waypoints.map((w) => ({ ...w, position: moved(w.position, [1, 0, 0]) }));
    if (!waypoints.every((w) => areApart(w.position, w.aim))) return frame;
    const id = freshId(frame.passes, original.id);
    const copy = { ...original, id, name: `${cutTo(original.name, longestName - 5)} copy`, waypoints };
    return { ...frame, passes: [...frame.passes, copy] };
  });

export const removePass = (setup: Setup, place: PassPlace): Setup =>
  changeFrame(setup, place, (frame) => ({ ...frame, passes: frame.passes.filter(({ id }) => id !== place.passId) }));
