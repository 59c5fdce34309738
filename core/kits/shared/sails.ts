import type { PartDraft } from '../kit.ts';
import { type Place, placeTogether } from './frame.ts';
import { beam } from './struts.ts';

const bars = 11;
/** Of a sail's length: where its lattice begins, how wide it is behind and before the arm. */
const [beginsShare, behindShare, beforeShare] = [0.2, 0.17, 0.04];
/** How far a sail is turned about its arm so that wind drives it, degrees; by eye. */
const weatherDegrees = 12;

/** A lattice sail that stands up from the hub, in the plane that faces south; `length` from hub to tip, metres. */
const sail = (length: number, thick: number): PartDraft[] => {
  const thin = Math.max(thick * 0.3, 0.02);
  const [begins, behind, before] = [length * beginsShare, length * behindShare, length * beforeShare];
  const lattice = [
    ...Array.from({ length: bars }, (_, k) => {
      const up = begins + ((length - thin / 2 - begins) * k) / (bars - 1);
      return beam('Sail bar', [-before, 0, up], [behind, 0, up], [thin, thin]);
    }),
    ...[-before, behind / 2, behind].map((east) =>
      beam('Sail lath', [east, 0, begins - thin / 2], [east, 0, length], [thin, thin * 0.8]),
    ),
  ];
  return [
    {
      kind: 'box',
      name: 'Sail arm',
      position: [0, thick * 0.55, 0],
      widthMetres: thick,
      depthMetres: thick,
      heightMetres: length,
      topShare: 0.6,
    },
    ...placeTogether(lattice, { turnDegrees: weatherDegrees }),
  ];
};

/** How far from the hub the farthest corner of a sail of length 1 goes round. */
export const sweptShare = Math.hypot(1, behindShare);

/**
 * Four sails about a hub.
 *
 * @param turnedDegrees how far the first leans to the east of upright
 * @param tiltDegrees how far the plane of the sails leans back from upright
 */
export const sailCross = (hub: Place, length: number, turnedDegrees: number, tiltDegrees: number): PartDraft[] => {
  const thick = Math.min(Math.max(length * 0.03, 0.08), 0.35);
  const cross = [0, 90, 180, 270].flatMap((quarter) =>
    placeTogether(sail(length, thick), { rollDegrees: turnedDegrees + quarter }),
  );
  return placeTogether(cross, { position: hub, tiltDegrees });
};
