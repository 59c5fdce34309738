import type { Traced } from '../../../core/trace/mask.ts';
import type { WorldFrame, WorldLight } from '../../../core/world/world.ts';

/** A light with a layer that is traced. */
export type TracedLight = WorldLight & { readonly source: Exclude<Traced, { kind: 'mask' }> };

/** The lights of a frame but for the sky that is seen, which is drawn. */
export const tracedLights = ({ lights }: WorldFrame): TracedLight[] =>
  lights.filter((light): light is TracedLight => light.source.kind !== 'seen-sky');
