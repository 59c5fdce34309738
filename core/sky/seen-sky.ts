import type { GlowDome } from './glow-dome.ts';
import type { SkyInput } from './sky-input.ts';

/** A sky as it is seen in one exposure. */
export interface SeenSky {
  /** As the shutter opens. */
  readonly input: SkyInput;
  readonly domes: readonly GlowDome[];
  /** How long the shutter is open: stars draw trails. */
  readonly seconds: number;
  /** Haze near the ground that it is seen through; null = none. */
  readonly haze: { readonly scatterPerMetre: number; readonly topMetres: number } | null;
}
