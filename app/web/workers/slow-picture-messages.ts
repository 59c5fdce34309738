import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import type { Stage } from '../../../core/world/stage.ts';

/** Pictures that are asked for; they take the place of those asked for before. */
export interface SlowPictureRequest {
  readonly id: number;
  /** Null when it is that of the request before: a large one is not copied with every change. */
  readonly stage: Stage | null;
  readonly order: Omit<PictureOrder, 'stage'>;
}

export interface SlowPictureAnswer {
  readonly id: number;
  readonly step: DrawnStep;
}
