import type { WalkLine } from '../../../core/readings/walk-lines.ts';
import { metresText, threeFigures } from './words.ts';

/**
 * A way on foot in a few words: "16 m · 32 s", and by how much it comes too late. The first is never late: the delay can be
 * as long as it takes, or the shutter is set off from afar.
 */
export const walkWords = ({ from, metres, seconds, availableSeconds }: WalkLine): string => {
  const late = from !== null && availableSeconds !== null ? seconds - availableSeconds : 0;
  const took = `${metresText(metres)} · ${Math.round(seconds)} s`;
  return late > 0.5 ? `${took}, ${threeFigures(Math.round(late))} s too late` : took;
};

/** Whether a way leads to a pass, or from the selected pass back to the camera. */
export const belongsTo = ({ from, to }: WalkLine, frameId: string, passId: string): boolean => {
  const end = to ?? from;
  return end?.frameId === frameId && end.passId === passId;
};

/** Under this a way is no walk to draw: one turns on the spot. Metres. */
const leastDrawnMetres = 0.5;

/** The ways that are drawn: no steps on the spot, and the way back only where it is another than the way out. */
export const drawnWalks = (walks: readonly WalkLine[]): WalkLine[] => {
  const out = walks.find(({ from }) => from === null);
  return walks.filter((walk) => {
    const { from, to, metres } = walk;
    if (metres <= leastDrawnMetres) return false;
    const isOutAgain = to === null && out?.to && from && belongsTo(out, from.frameId, from.passId);
    return !isOutAgain || Math.abs(metres - out.metres) > leastDrawnMetres;
  });
};
