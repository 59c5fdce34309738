import { beamWidth } from '../../../core/photometry/beam-angle.ts';
import type { Lamp, MeasuredBeam } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';

const widestDegrees = 150;
/** Lamps without optics shine all round. */
export const allRoundDegrees = 360;
/** Beyond a half space there is no cone to draw; a hair more, so that rounding leaves the half space in. */
const halfSpaceDegrees = 180.001;

/** How wide a lamp's beam is drawn, full angle in degrees; 360 for lamps without optics, which have no edge. */
export const drawnBeamDegrees = (lamp: Lamp, measured: readonly MeasuredBeam[]): number => {
  const { fullRadians } = beamWidth(emitterOf(lamp, measured));
  const full = degreesFromRadians(fullRadians ?? 2 * Math.PI);
  return full > halfSpaceDegrees ? allRoundDegrees : Math.min(full, widestDegrees);
};
