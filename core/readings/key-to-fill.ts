import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { WorldLight } from '../world/world.ts';
import type { FaceLight } from './face-light.ts';
import { percentile } from './percentile.ts';

/** Share of the face that a light's best is taken at: the greatest of all would hang on a single ray. */
const bestShare = 0.95;

/**
 * What lights do together at their best on a subject's face: the 95th percentile of dose over all that the camera sees of
 * it, lit or not, lux seconds; 0 when less than a twentieth of the face is lit, null when the camera does not see it. Of
 * one light it goes with level and seconds in proportion.
 *
 * @param lights each with its light on the same face, as `faceLight` gives it
 */
export const bestDose = (
  lights: readonly (readonly [light: Pick<WorldLight, 'strength' | 'seconds'>, face: FaceLight])[],
): number | null => {
  const points = lights[0]?.[1] ?? [];
  if (points.length === 0) return null;
  const doses = points.map((_, p) =>
    lights.reduce(
      (sum, [{ strength, seconds }, face]) =>
        sum + (face[p] as FaceLight[number]).lux * luminanceOfLinearSrgb(strength) * seconds,
      0,
    ),
  );
  return percentile(doses, bestShare);
};

/** What is known of a pass when key and fill are looked for. */
export interface PassDose {
  readonly passId: string;
  /** Subject that the pass is about; null if none. */
  readonly subjectId: string | null;
  /** At its best on the subject's face; null when that is not seen. */
  readonly bestDoseLuxSeconds: number | null;
}

/** The two lights that model a frame's subject, and how far they lie apart. */
export interface KeyToFill {
  /** Key over fill, each at its best; null when there is no key or no fill. */
  readonly keyToFillStops: number | null;
  /** The pass that does most; null when none does anything. */
  readonly keyPassId: string | null;
  /** The pass that does next most on the same subject; null when the fill is moon and sky together. */
  readonly fillPassId: string | null;
}

/**
 * Finds key and fill among the passes of a frame. Ratios of key to fill are common practice, no published source; in
 * stops they are log2.
 *
 * @param ambientDose best dose of moon and sky together on a subject's face, asked for only when no other pass fills it
 */
export const keyToFill = (
  passes: readonly PassDose[],
  ambientDose: (subjectId: string) => number | null,
): KeyToFill => {
  const doing = passes
    .filter(({ subjectId, bestDoseLuxSeconds }) => subjectId !== null && (bestDoseLuxSeconds ?? 0) > 0)
    .sort((a, b) => (b.bestDoseLuxSeconds ?? 0) - (a.bestDoseLuxSeconds ?? 0));
  const key = doing[0];
  if (!key?.subjectId) return { keyToFillStops: null, keyPassId: null, fillPassId: null };
  const fill = doing.find((pass) => pass !== key && pass.subjectId === key.subjectId);
  const dose = (fill ? fill.bestDoseLuxSeconds : ambientDose(key.subjectId)) ?? 0;
  return {
    keyToFillStops: dose > 0 ? stopsFromRatio((key.bestDoseLuxSeconds ?? 0) / dose) : null,
    keyPassId: key.passId,
    fillPassId: fill?.passId ?? null,
  };
};
