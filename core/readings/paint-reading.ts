import { doseForMidGrey, type Exposure } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { meterReceiver } from '../trace/meter.ts';
import { ratioFromStops } from '../units/stops.ts';
import type { Stage } from '../world/stage.ts';
import type { WorldLight } from '../world/world.ts';
import { paintBudgetLumenSeconds } from './count.ts';
import type { Silhouette } from './rim-reading.ts';

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

const samples = 4;

/** Reads the paint budget of a pass; null when the camera does not see the subject or none of the light lands on it. */
export const paintReading = (
  stage: Stage,
  { face }: Silhouette,
  { source, strength }: WorldLight,
  exposure: Exposure,
  wantedStops: number,
): PaintReading | null => {
  const flux = luminanceOfLinearSrgb(strength);
  let [area, lumens, reflected] = [0, 0, 0];
  for (const { point, areaSquareMetres } of face) {
    area += areaSquareMetres;
    lumens += meterReceiver(stage, source, point, samples) * flux * areaSquareMetres;
    reflected += luminanceOfLinearSrgb(point.reflectance) * areaSquareMetres;
  }
  if (lumens <= 0 || reflected <= 0) return null;
  const dose = doseForMidGrey(exposure, reflected / area) * ratioFromStops(wantedStops);
  const budget = paintBudgetLumenSeconds(dose, area);
  return { areaSquareMetres: area, lumensOnSubject: lumens, budgetLumenSeconds: budget, seconds: budget / lumens };
};
