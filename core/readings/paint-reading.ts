import { doseForMidGrey, type Exposure } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { ratioFromStops } from '../units/stops.ts';
import type { WorldLight } from '../world/world.ts';
import { paintBudgetLumenSeconds } from './count.ts';
import type { FaceLight } from './face-light.ts';

/** What it takes to paint the subject as the camera sees it, by a beam swept over it: distance does not matter then. */
export interface PaintReading {
  /** Surface of the subject that the camera sees. */
  readonly areaSquareMetres: number;
  /** Light of this pass that lands on it. */
  readonly lumensOnSubject: number;
  /** Dose for the wanted level times area. */
  readonly budgetLumenSeconds: number;
  /** Budget over lumens. */
  readonly seconds: number;
}

/**
 * Reads the paint budget of a pass; null when the camera does not see the subject or none of the light lands on it.
 *
 * @param face light of the pass's source on the subject
 */
export const paintReading = (
  face: FaceLight,
  { strength }: Pick<WorldLight, 'strength'>,
  exposure: Exposure,
  wantedStops: number,
): PaintReading | null => {
  const flux = luminanceOfLinearSrgb(strength);
  let [area, lumens, reflected] = [0, 0, 0];
  for (const { lux, reflectance, areaSquareMetres } of face) {
    area += areaSquareMetres;
    lumens += lux * flux * areaSquareMetres;
    reflected += reflectance * areaSquareMetres;
  }
  if (lumens <= 0 || reflected <= 0) return null;
  const dose = doseForMidGrey(exposure, reflected / area) * ratioFromStops(wantedStops);
  const budget = paintBudgetLumenSeconds(dose, area);
  return { areaSquareMetres: area, lumensOnSubject: lumens, budgetLumenSeconds: budget, seconds: budget / lumens };
};
