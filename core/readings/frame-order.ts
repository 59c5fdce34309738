import type { Frame, Pass, Scheme } from '../setup/schema/setup.ts';
import { exactSeconds } from '../units/third-stops.ts';

/** When a frame is exposed if all frames follow each other as listed, each after its delay. */
export interface FrameOrder {
  /** 1 for the first. */
  readonly number: number;
  /** The shutter opens and closes so many seconds after it first opened. Marked times count as what they are: 30 s is 32. */
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** Start and end of each frame, in order. */
export const frameOrders = ({ frames }: Pick<Scheme, 'frames'>): FrameOrder[] => {
  let now = 0;
  return frames.map(({ delaySeconds, seconds }, f) => {
    // the delay of the first comes before the first shutter, from which time counts
    const startSeconds = f === 0 ? 0 : now + delaySeconds;
    now = startSeconds + exactSeconds(seconds);
    return { number: f + 1, startSeconds, endSeconds: now };
  });
};

/** A pass held in the hand, in running order; seconds from the first shutter. */
export interface HeldPass {
  readonly frame: Frame;
  readonly pass: Pass;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** The passes that are held in the hand, in the order in which one person does them, across frames too. */
export const heldInOrder = (scheme: Pick<Scheme, 'frames'>): HeldPass[] => {
  const orders = frameOrders(scheme);
  const held = scheme.frames.flatMap((frame, f) => {
    const opens = (orders[f] as FrameOrder).startSeconds;
    return frame.passes.flatMap((pass): HeldPass[] =>
      pass.held === 'hand' ? [{ frame, pass, startSeconds: opens + pass.on, endSeconds: opens + pass.off }] : [],
    );
  });
  return held.sort((a, b) => a.startSeconds - b.startSeconds);
};
