import type { Position } from '../../../core/setup/schema/setup.ts';
import { measuredLength } from '../../../core/units/measured-length.ts';
import { lengthWords, worded } from './lengths.ts';
import { signed } from './words.ts';

interface LaidTape {
  readonly from: Position | null;
  readonly to: Position | null;
}

/** What a tape says: "4.83 m · 6 paces · 12° from the scene’s north · +0.50 m higher"; a hint while it is not laid. */
export const tapeWords = ({ from, to }: LaidTape, paceMetres: number): string => {
  if (!from || !to) return 'Press one place and drag to the other';
  const { metres, levelMetres, riseMetres, bearingDegrees } = measuredLength(from, to);
  const steps = Math.round(levelMetres / paceMetres);
  const rises = Math.abs(riseMetres) >= 0.005;
  return [
    lengthWords(metres, 2),
    steps === 1 ? '1 pace' : `${steps} paces`,
    ...(bearingDegrees === null ? [] : [`${Math.round(bearingDegrees) % 360}° from the scene’s north`]),
    ...(rises ? [worded(`${signed(riseMetres, 2)} m up, ${levelMetres.toFixed(2)} m over the ground`)] : []),
  ].join(' · ');
};

/** The same for a label: length and paces alone. */
export const shortTapeWords = (tape: LaidTape, paceMetres: number): string =>
  tapeWords(tape, paceMetres).split(' · ').slice(0, 2).join(' · ');
