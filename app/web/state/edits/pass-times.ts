import { litFrom } from '../../../../core/passes/lit-from.ts';
import type { Frame, Pass, Setup } from '../../../../core/setup/schema/setup.ts';
import { changeFrame, type PassPlace } from './within.ts';

/** Shortest time that a lamp is on, seconds. */
const shortestSeconds = 0.01;

const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);

/** What of a pass is moved along its frame's clock: an end, or all of it. */
export type PassEdge = 'on' | 'off' | 'whole';

const movedTo = (pass: Pass, frame: Frame, edge: PassEdge, seconds: number): Pass => {
  const length = pass.off - pass.on;
  if (edge === 'on') return litFrom(pass, clamp(seconds, 0, Math.max(pass.off - shortestSeconds, 0)), pass.off);
  if (edge === 'off') return litFrom(pass, pass.on, clamp(seconds, pass.on + shortestSeconds, frame.seconds));
  const on = clamp(seconds, 0, frame.seconds - length);
  // on + length may round to a hair past the frame's end
  return on === pass.on ? pass : litFrom(pass, on, Math.min(on + length, frame.seconds));
};

/**
 * Switches a lamp on or off at another time, or moves the whole pass so that it begins then. It is held within the frame,
 * and one end stops short of the other.
 *
 * @param seconds after the shutter opens
 */
export const movePassEdge = (setup: Setup, place: PassPlace, edge: PassEdge, seconds: number): Setup =>
  changeFrame(setup, place, (frame) => {
    const pass = frame.passes.find(({ id }) => id === place.passId);
    const moved = pass && movedTo(pass, frame, edge, seconds);
    if (!moved || moved === pass) return frame;
    return { ...frame, passes: frame.passes.map((each) => (each === pass ? moved : each)) };
  });
