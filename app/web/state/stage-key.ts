import type { Setup } from '../../../core/setup/schema/setup.ts';

let nextKey = 1;
const keys = new WeakMap<object, WeakMap<object, WeakMap<object, number>>>();

const within = <V extends object>(map: WeakMap<object, V>, key: object, fresh: () => V): V => {
  const value = map.get(key) ?? fresh();
  map.set(key, value);
  return value;
};

/** A number that changes when the subjects, the ground or the scans of a setup change. */
export const stageKeyOf = ({ subjects, ground, scans }: Setup): number => {
  const byGround = within(keys, subjects, () => new WeakMap<object, WeakMap<object, number>>());
  const byScans = within(byGround, ground, () => new WeakMap<object, number>());
  const key = byScans.get(scans) ?? nextKey++;
  byScans.set(scans, key);
  return key;
};
