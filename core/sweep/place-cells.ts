import type { Setup } from '../setup/schema/setup.ts';
import { clockText } from '../units/clock.ts';
import { dosedCell, heightText, plainCell, type SweepCell, sweptMetres } from './cell.ts';
import { movedPass } from './move-pass.ts';
import type { FoundPass } from './pass-at.ts';
import { requireBearing, standOf } from './stand.ts';
import { targetDoseLuxSeconds } from './target-dose.ts';
import { withDose } from './with-dose.ts';

/** The lamp walked round its aim, row by row: a row for each height, columns from six o'clock as the clock runs. */
export const angleCells = (
  { pass, camera }: FoundPass,
  steps: number,
  heightsMetres: readonly number[],
): SweepCell[] => {
  const stand = standOf(pass, camera);
  requireBearing(stand);
  return heightsMetres.flatMap((height, r) =>
    Array.from({ length: steps }, (_, c) => {
      const hours = (6 + (12 * c) / steps) % 12;
      const moved = movedPass(pass, stand.placeAt(hours, stand.levelDistanceMetres, height));
      return plainCell(`angles-${r}-${c}`, heightText(height), clockText(hours), moved);
    }),
  );
};

/** The lamp raised and lowered where it stands. */
export const heightCells = ({ pass, camera }: FoundPass, heightsMetres: readonly number[]): SweepCell[] => {
  const stand = standOf(pass, camera);
  return heightsMetres.map((height, c) => {
    const moved = movedPass(pass, stand.placeAt(stand.clockHours, stand.levelDistanceMetres, height));
    return plainCell(`heights-0-${c}`, stand.clock, heightText(height), moved);
  });
};

/** The lamp nearer and farther on its bearing, at its height, with the dose at its target kept as metered. */
export const distanceCells = (setup: Setup, found: FoundPass, distancesMetres: readonly number[]): SweepCell[] => {
  const { pass, lamp, frame, camera } = found;
  const stand = standOf(pass, camera);
  requireBearing(stand);
  const wanted = targetDoseLuxSeconds(setup, found, pass);
  return distancesMetres.map((away, c) => {
    const moved = movedPass(pass, stand.placeAt(stand.clockHours, away, stand.heightMetres));
    const [id, row, column] = [`distances-0-${c}`, stand.clock, sweptMetres(away)] as const;
    const got = targetDoseLuxSeconds(setup, found, moved);
    if (wanted === null || got === null)
      return {
        ...plainCell(id, row, column, moved),
        note: 'The camera sees no surface at the aim: level and count stay.',
      };
    if (wanted === 0 || got === 0) {
      const where = wanted === 0 ? 'where the lamp stands now' : 'from here';
      const note = `No light of the pass reaches its target ${where}: level and count stay.`;
      return { ...plainCell(id, row, column, moved), note };
    }
    return dosedCell(id, row, column, withDose(moved, lamp, frame, wanted / got));
  });
};
