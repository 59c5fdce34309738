import { signed } from './words.ts';

/** "real −0.8 stop, 3 shots". */
export const realWords = (correctionStops: number, shots: number): string => {
  const text = signed(correctionStops);
  const stop = Math.abs(Number(correctionStops.toFixed(1))) > 1 ? 'stops' : 'stop';
  const by = shots === 0 ? 'as typed' : shots === 1 ? '1 shot' : `${shots} shots`;
  return `real ${text} ${stop}, ${by}`;
};
