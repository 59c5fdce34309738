import type { Pass } from '../setup/schema/setup.ts';

/** The time of one stroke, seconds after the shutter opens. */
export interface Stroke {
  readonly on: number;
  readonly off: number;
  readonly seconds: number;
}

/** The first stroke of a pass, whose times the waypoints have: all strokes take as long, there and back in turn. */
export const firstStroke = ({ on, off, strokes }: Pick<Pass, 'on' | 'off' | 'strokes'>): Stroke => {
  const seconds = (off - on) / strokes;
  // one stroke ends when the pass does, to the last digit
  return { on, off: strokes === 1 ? off : on + seconds, seconds };
};
