import { frameOrders } from '../../../core/readings/frame-order.ts';
import { isSetByHand } from '../../../core/readings/set-off.ts';
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

/**
 * Seconds by which the clock of the frames is held up on the way back to the camera: what is still to walk when the last frame
 * before one that is set by hand has closed.
 */
export const waitedForSeconds = (walks: readonly WalkLine[], scheme: Pick<Scheme, 'frames'>): number => {
  const orders = frameOrders(scheme);
  const waited = ({ from, to, seconds }: WalkLine): number => {
    const f = scheme.frames.findIndex(({ id }) => id === from?.frameId);
    const set = scheme.frames.findIndex((_, g) => g > f && isSetByHand(scheme, g));
    const pass = scheme.frames[f]?.passes.find(({ id }) => id === from?.passId);
    const [own, last] = [orders[f], orders[set - 1]];
    if (to !== null || !pass || !own || !last) return 0;
    return Math.max(0, seconds - (last.endSeconds - own.startSeconds - pass.off));
  };
  return walks.reduce((sum, walk) => sum + waited(walk), 0);
};
