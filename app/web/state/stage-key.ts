import type { Setup } from '../../../core/setup/schema/setup.ts';

let nextKey = 1;
const keys = new WeakMap<object, WeakMap<object, number>>();

/** A number that changes when the subjects or the ground of a setup change. */
export const stageKeyOf = ({ subjects, ground }: Setup): number => {
  const byGround = keys.get(subjects) ?? new WeakMap<object, number>();
  keys.set(subjects, byGround);
  const key = byGround.get(ground) ?? nextKey++;
  byGround.set(ground, key);
  return key;
};
