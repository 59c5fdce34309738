import type { Stage } from '../world/stage.ts';

/** What stands between the lens and what it would see. */
export type Hider =
  | { readonly kind: 'subject'; readonly subjectId: string }
  | { readonly kind: 'ground' }
  /** Whoever holds the lamp. */
  | { readonly kind: 'holder' };

/** A subject by its place among the stage’s; the ground, which has none. */
export const hiderOf = ({ subjects }: Stage, subject: number): Hider => {
  const found = subjects[subject];
  return found ? { kind: 'subject', subjectId: found.id } : { kind: 'ground' };
};
