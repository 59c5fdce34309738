import { degreesApart } from '../units/angle.ts';
import { type AmbientWays, steepDegrees } from './ambient-ways.ts';
import type { ShadowReading } from './shadow-reading.ts';

/** Angles on the ground between the way a pass's shadow points and the way another light's does: 0 agrees, 180 is against. */
export interface AgreementReading {
  /** null without a moon whose shadow shows. */
  readonly moonDegrees: number | null;
  /** Against the glow that stands out most; null where none outshines the sky around it. */
  readonly glowDegrees: number | null;
}

/**
 * Reads whether a pass's shadow points the way that moonlight or the glow of a town would have it. Added light that does
 * not contradict: common practice, no published source. Both null when the lamp stands steeply over its subject.
 *
 * @param shadow of the pass's subject; null when it has none
 * @param lampElevationDegrees of the lamp as seen from its aim
 */
export const agreementReading = (
  shadow: ShadowReading | null,
  lampElevationDegrees: number,
  ways: AmbientWays,
): AgreementReading => {
  if (!shadow || lampElevationDegrees > steepDegrees) return { moonDegrees: null, glowDegrees: null };
  // a light's shadow points the other way than the light stands
  const against = (bearingDegrees: number | null) =>
    bearingDegrees === null ? null : degreesApart(shadow.bearingDegrees, bearingDegrees + 180);
  return { moonDegrees: against(ways.moonBearingDegrees), glowDegrees: against(ways.glowBearingDegrees) };
};
