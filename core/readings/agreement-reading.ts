import type { Setup } from '../setup/schema/setup.ts';
import { degreesApart } from '../units/angle.ts';
import type { ShadowReading } from './shadow-reading.ts';

/** Angles on the ground between the way a pass's shadow points and the way another light's does: 0 agrees, 180 is against. */
export interface AgreementReading {
  /** null without moonlight. */
  readonly moonDegrees: number | null;
  /** Against the glow dome that is brightest at the horizon; null without one. */
  readonly glowDegrees: number | null;
}

/** The light that the scene has without lamps. */
export type Ambient = Pick<Setup['place'], 'moonlight' | 'glowDomes'>;

/** From here up a light stands so high that its shadow has no way to point; our choice. */
const steepDegrees = 85;

const brightestDome = ({ glowDomes }: Ambient): Ambient['glowDomes'][number] | null => {
  const [first = null, ...others] = glowDomes.filter(({ luminanceAt10DegreesCdM2 }) => luminanceAt10DegreesCdM2 > 0);
  return others.reduce(
    (best, dome) => (best && dome.luminanceAt10DegreesCdM2 > best.luminanceAt10DegreesCdM2 ? dome : best),
    first,
  );
};

/**
 * Reads whether a pass's shadow points the way that moonlight or the glow of a town would have it. Added light that does
 * not contradict: common practice, no published source. Both null when the lamp stands steeply over its subject;
 * moonlight steeply from above counts as none.
 *
 * @param shadow of the pass's subject; null when it has none
 * @param lampElevationDegrees of the lamp as seen from its aim
 */
export const agreementReading = (
  shadow: ShadowReading | null,
  lampElevationDegrees: number,
  ambient: Ambient,
): AgreementReading => {
  if (!shadow || lampElevationDegrees > steepDegrees) return { moonDegrees: null, glowDegrees: null };
  const { moonlight } = ambient;
  const hasMoonShadow = moonlight && moonlight.illuminanceLux > 0 && moonlight.altitudeDegrees <= steepDegrees;
  const dome = brightestDome(ambient);
  // a light's shadow points the other way than the light stands
  const against = (bearingDegrees: number) => degreesApart(shadow.bearingDegrees, bearingDegrees + 180);
  return {
    moonDegrees: hasMoonShadow ? against(moonlight.bearingDegrees) : null,
    glowDegrees: dome ? against(dome.bearingDegrees) : null,
  };
};
