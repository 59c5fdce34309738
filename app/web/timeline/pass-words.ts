import type { Pass } from '../../../core/setup/schema/setup.ts';
import { shutterText } from '../ui/words.ts';

const strokeWords = ({ strokes }: Pass): string => (strokes === 1 ? 'one stroke' : `${strokes} strokes`);

/** What is to be known of a pass beside its name; "" for a lamp held still. */
export const heldWords = (pass: Pass): string => {
  if (pass.held === 'stand') return 'on a stand';
  return pass.waypoints.length > 1 ? strokeWords(pass) : '';
};

/** What is to be done in it: "count 8 s", "count 48 s, 3 strokes", "on its stand 20 s". */
export const orderWords = (pass: Pass): string => {
  // a number stays on one line with its unit
  const seconds = `${shutterText(pass.off - pass.on)}\u00a0s`;
  if (pass.held === 'stand') return `on its stand ${seconds}`;
  return pass.waypoints.length > 1 ? `count ${seconds}, ${strokeWords(pass)}` : `count ${seconds}`;
};
