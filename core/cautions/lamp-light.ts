import type { LampSource } from '../trace/moments-taken.ts';
import type { WorldFrame, WorldLight } from '../world/world.ts';

/** The light of a pass: that of a lamp. */
export type LampLight = WorldLight & { readonly source: LampSource };

/** The light of a pass in its frame; each pass has one. */
export const lampLight = ({ lights }: WorldFrame, passId: string): LampLight =>
  lights.find((light): light is LampLight => light.id === passId && light.source.kind === 'lamp') as LampLight;
