import { type PathKind, pathKind } from '../../../core/passes/path-legs.ts';
import { pathSpeed } from '../../../core/passes/path-speed.ts';
import { firstStroke } from '../../../core/passes/stroke.ts';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { worded } from '../ui/lengths.ts';
import { threeFigures } from '../ui/words.ts';

/** Choices of what moves, in words. */
export const pathKinds: readonly (readonly [PathKind, string])[] = [
  ['still', 'still'],
  ['sweep', 'sweep'],
  ['walk', 'walk'],
];

/** Two speeds that read alike are one. */
const rangeText = ([slowest, fastest]: readonly [number, number], unit: string): string => {
  const [from, to] = [threeFigures(slowest), threeFigures(fastest)];
  return fastest < slowest * 1.05 ? `${to}${unit}` : `${from} to ${to}${unit}`;
};

/** "Each stroke 4 s · 8.1°/s": how long the way takes once, and how fast it is gone. Null for a lamp that stands still. */
export const speedWords = (pass: Pass): string | null => {
  const speed = pathSpeed(pass.waypoints);
  if (!speed) return null;
  const isWalk = pathKind(pass.waypoints) === 'walk';
  const [slowest, fastest] = speed.turnRadiansPerSecond;
  const pace = isWalk
    ? worded(rangeText(speed.lampMetresPerSecond, ' m/s'))
    : rangeText([degreesFromRadians(slowest), degreesFromRadians(fastest)], '°/s');
  const seconds = `${threeFigures(firstStroke(pass).seconds)} s`;
  return `${pass.strokes > 1 ? `Each stroke ${seconds}` : `One stroke of ${seconds}`} · ${pace}`;
};
