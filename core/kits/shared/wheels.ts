import { finishNamed } from '../../setup/finish-presets.ts';
import type { PartDraft } from '../kit.ts';
import { type Place, placeTogether } from './frame.ts';
import { rod } from './struts.ts';

/** A thing turned about the upright axis through the origin, laid so that it rolls to the north, its top to the east. */
const rolling = (parts: readonly PartDraft[], position: Place, side: number): PartDraft[] =>
  placeTogether(parts, { position, rollDegrees: 90 * side });

/** A wheel with a tyre on a plain disc, outside to the east (side 1) or the west (-1); `position` is its middle. */
export const tyredWheel = (position: Place, radius: number, width: number, side: number): PartDraft[] => {
  const half = width / 2;
  const tyre: PartDraft = {
    kind: 'turned',
    name: 'Tyre',
    closed: true,
    sides: 40,
    profile: [
      [radius * 0.62, -half],
      [radius * 0.92, -half],
      [radius, -half + radius * 0.08],
      [radius, half - radius * 0.08],
      [radius * 0.92, half],
      [radius * 0.62, half * 0.9],
    ],
    finish: { reflectance: 0.05 },
  };
  const disc: PartDraft = {
    kind: 'turned',
    name: 'Wheel',
    sides: 32,
    profile: [
      [0, -half * 0.8],
      [radius * 0.64, -half * 0.8],
      [radius * 0.64, half * 0.75],
      [radius * 0.55, half * 0.8],
      [radius * 0.48, half * 0.45],
      [radius * 0.22, half * 0.4],
      [radius * 0.16, half * 0.7],
      [0, half * 0.72],
    ],
    finish: finishNamed('bare-metal'),
  };
  return rolling([tyre, disc], position, side);
};

/** A wooden wheel with an iron tyre. */
export const spokedWheel = (position: Place, radius: number, spokes: number, side: number): PartDraft[] => {
  const ring = (name: string, [inner, outer]: readonly [number, number], half: number): PartDraft => ({
    kind: 'turned',
    name,
    closed: true,
    sides: 48,
    profile: [
      [inner, -half],
      [outer, -half],
      [outer, half],
      [inner, half],
    ],
  });
  const hub: PartDraft = {
    kind: 'turned',
    name: 'Hub',
    sides: 24,
    profile: [
      [0, -0.14],
      [0.055, -0.14],
      [0.085, -0.05],
      [0.085, 0.05],
      [0.06, 0.14],
      [0, 0.14],
    ],
  };
  const felloe = radius - 0.075;
  const spoke = (k: number): PartDraft => {
    const turn = (2 * Math.PI * k) / spokes;
    const at = (r: number, up: number): Place => [r * Math.cos(turn), r * Math.sin(turn), up];
    return rod('Spoke', at(0.06, 0), at(felloe + 0.02, 0), [0.028, 0.02], { sides: 8 });
  };
  return rolling(
    [
      { ...ring('Tyre', [radius - 0.012, radius], 0.033), finish: finishNamed('rusted-iron') },
      ring('Felloe', [felloe, radius - 0.01], 0.036),
      hub,
      ...Array.from({ length: spokes }, (_, k) => spoke(k)),
    ],
    position,
    side,
  );
};
