import { wasAtCameraSince } from '../../../core/readings/set-off.ts';
import type { WalkLine } from '../../../core/readings/walk-lines.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
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

/** The ways that are drawn: no steps on the spot, and a way back only where it is another than the way out to the same pass. */
export const drawnWalks = (walks: readonly WalkLine[]): WalkLine[] =>
  walks.filter(({ from, to, metres }) => {
    if (metres <= leastDrawnMetres) return false;
    if (to !== null || from === null) return true;
    const out = walks.find((walk) => walk.from === null && belongsTo(walk, from.frameId, from.passId));
    return !out || Math.abs(metres - out.metres) > leastDrawnMetres;
  });

/** Seconds on foot back to the camera for frames that are set by hand: the clock of the frames waits for them. */
export const waitedForSeconds = (walks: readonly WalkLine[], { frames }: Pick<Scheme, 'frames'>): number => {
  const last = frames.at(-1);
  const isWaitedFor = ({ from, to }: WalkLine): boolean => {
    const frame = frames.find(({ id }) => id === from?.frameId);
    return to === null && frame !== undefined && last !== undefined && wasAtCameraSince({ frames }, frame, last);
  };
  return walks.filter(isWaitedFor).reduce((sum, { seconds }) => sum + seconds, 0);
};
