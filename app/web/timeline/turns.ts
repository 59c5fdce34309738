import { type FrameOrder, frameOrders, heldInOrder } from '../../../core/readings/frame-order.ts';
import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';

/** A pass held in the hand that comes before another, as the clock of the other's frame has it. */
export interface Before {
  readonly passId: string;
  /** When it ends; below 0 where it is in an earlier frame. */
  readonly endSeconds: number;
  readonly isWithinFrame: boolean;
}

/** A frame in its turn. */
export interface Turn {
  readonly frame: Frame;
  readonly order: FrameOrder;
  /** By pass id, for passes that somebody walks to. */
  readonly before: ReadonlyMap<string, Before>;
}

/** The frames of a scheme in their order, and for each pass in the hand the one that is held before it. */
export const turnsOf = (scheme: Scheme): readonly Turn[] => {
  const orders = frameOrders(scheme);
  const held = heldInOrder(scheme);
  return scheme.frames.map((frame, f) => ({
    frame,
    order: orders[f] as FrameOrder,
    before: new Map(
      held.flatMap(({ frame: own, pass }, i): [string, Before][] => {
        const last = held[i - 1];
        if (own !== frame || !last) return [];
        return [
          [
            pass.id,
            {
              passId: last.pass.id,
              endSeconds: last.endSeconds - (orders[f] as FrameOrder).startSeconds,
              isWithinFrame: last.frame === frame,
            },
          ],
        ];
      }),
    ),
  }));
};
