import type { Kit } from './kit.ts';

/** The kits in the order in which they are offered. */
export const allKits: readonly Kit[] = [];

/** The kit of a name; null where this program does not know it. */
export const kitNamed = (name: string): Kit | null => allKits.find((kit) => kit.name === name) ?? null;
