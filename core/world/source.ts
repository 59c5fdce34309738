import type { Triple } from '../colour/matrix.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { Emitter } from '../photometry/emitter.ts';
import type { DomeOf } from '../sky/dome-of.ts';
import type { SeenSky } from '../sky/seen-sky.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import type { PathPoint } from './lamp-place.ts';

/** Whoever holds a lamp. */
export interface Holder {
  /** Of the clothes. */
  readonly reflectance: number;
  /** Whether they and their shadow are seen in pictures. Readings know of them either way. */
  readonly isDrawn: boolean;
}

/**
 * Where light comes from, at unit strength: one lumen of a lamp, one lux of the moon on what faces it, one lux of a sky on
 * level ground; a sky that is seen counts as it is. A source makes one layer. Plain data, so that equal sources are known.
 */
export type Source =
  | {
      readonly kind: 'lamp';
      readonly emitter: Emitter;
      readonly path: readonly PathPoint[];
      readonly onOff: readonly [number, number];
      /** null for a lamp on a stand. */
      readonly holder: Holder | null;
    }
  | { readonly kind: 'moon'; readonly toward: Vec3; readonly radiusRadians: number }
  /** A plain even sky: it lights the land and is seen over it. */
  | { readonly kind: 'sky' }
  /** The sky of an hour, or the glow of a town, as light on the land; it shows in mirrors, not over the land. */
  | { readonly kind: 'dome'; readonly of: DomeOf }
  /** The same sky as it is seen over the land, with its stars; it lights nothing. */
  | { readonly kind: 'seen-sky'; readonly sky: SeenSky };

/** A source in a frame with what it weighs there. */
export interface WorldLight {
  /** Pass id, or "moon", "sky", "glow 1" …, "seen sky". */
  readonly id: string;
  readonly source: Source;
  /** Linear RGB, luminance in lumens (lamps) or lux (moon, sky); 1 for a sky that is seen. */
  readonly strength: Triple;
  /** Time that it shines while the shutter is open. */
  readonly seconds: number;
  /** From when to when that is, seconds after the shutter opens. */
  readonly lit: readonly [on: number, off: number];
  /** Luminance of whoever holds the lamp under moon and sky, linear RGB, cd/m^2; null where nobody is drawn. */
  readonly holderLuminance: Triple | null;
}

/** Angular radius of the moon at its mean distance: half of 0.518 degrees (checkvalues.md 8h). */
export const meanMoonRadiusRadians = radiansFromDegrees(0.518 / 2);
