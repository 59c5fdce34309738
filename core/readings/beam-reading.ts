import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { beamAngleRadians } from '../photometry/beam-angle.ts';
import { emittedShare } from '../photometry/emitted-share.ts';
import { emitterPeakPerLumen } from '../photometry/emitter.ts';
import { degreesFromRadians } from '../units/angle.ts';
import type { WorldLight } from '../world/world.ts';

/** What leaves a lamp in a pass, after level, gels, cloth and snoot. */
export interface BeamReading {
  readonly lumens: number;
  /** Highest intensity; with cloth that spreads, at most this. */
  readonly peakCandela: number;
  /** Full angle where the intensity has fallen to half; null for lamps that shine all round. */
  readonly beamDegrees: number | null;
  /** Width of the beam, between those halves, at the target's distance. */
  readonly patchMetres: number | null;
}

/** Reads a lamp's beam. */
export const beamReading = ({ source, strength }: WorldLight, distanceMetres: number): BeamReading => {
  if (source.kind !== 'lamp') throw new Error('only lamps have a beam');
  const flux = luminanceOfLinearSrgb(strength);
  const angle = beamAngleRadians(source.emitter);
  return {
    lumens: flux * emittedShare(source.emitter),
    peakCandela: flux * emitterPeakPerLumen(source.emitter),
    beamDegrees: angle === null ? null : degreesFromRadians(angle),
    patchMetres: angle === null ? null : 2 * distanceMetres * Math.tan(angle / 2),
  };
};
