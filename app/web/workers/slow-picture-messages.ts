import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import type { Stage } from '../../../core/world/stage.ts';

/** Pictures that are asked for; they take the place of those asked for before. */
export interface SlowPictureRequest {
  readonly id: number;
  /** Null when it is that of the request before: a large one is not copied with every change. */
  readonly stage: Stage | null;
  /** Null when nothing is wanted any more. */
  readonly order: Omit<PictureOrder, 'stage'> | null;
}

export type SlowPictureAnswer =
  | { readonly kind: 'step'; readonly id: number; readonly step: DrawnStep }
  /** Said now and then between two steps, which may be minutes apart. */
  | { readonly kind: 'at work'; readonly id: number }
  | { readonly kind: 'failed'; readonly id: number };
