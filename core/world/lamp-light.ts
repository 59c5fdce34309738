import {
  type Beam,
  exponentFromHalfPeak,
  intensityPerLumen,
  lambertianBeam,
  peakFromBeamDistance,
} from '../photometry/beam.ts';
import type { Emitter } from '../photometry/emitter.ts';
import type { Beam as BeamField, Lamp } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';

/** Share of the spill's half angle that is even; the rest is its soft edge (our choice; no published source). */
const evenShareOfSpill = 0.75;

const cosHalf = (fullDegrees: number) => Math.cos(radiansFromDegrees(fullDegrees / 2));

const beamOf = (beam: BeamField): Beam => {
  if (beam.shape === 'open') return lambertianBeam;
  if (beam.shape === 'flood')
    return { exponent: 1, cosSpill: cosHalf(beam.degrees), cosSpillEven: cosHalf(beam.degrees), spillShare: 1 };
  return {
    exponent: exponentFromHalfPeak(radiansFromDegrees(beam.beamDegrees / 2)),
    cosSpill: cosHalf(beam.spillDegrees),
    cosSpillEven: cosHalf(beam.spillDegrees * evenShareOfSpill),
    spillShare: beam.spillShare,
  };
};

/** The shining part of a lamp, in metres. */
export const emitterOf = (lamp: Lamp): Emitter => {
  const metres = (mm: number) => mm / 2000;
  switch (lamp.kind) {
    case 'torch':
      return { shape: 'disc', halfWidthMetres: metres(lamp.diameterMm), halfHeightMetres: 0, beam: beamOf(lamp.beam) };
    case 'panel':
      return {
        shape: 'rectangle',
        halfWidthMetres: metres(lamp.widthMm),
        halfHeightMetres: metres(lamp.heightMm),
        beam: beamOf(lamp.beam),
      };
    case 'lantern':
      return { shape: 'sphere', halfWidthMetres: metres(lamp.diameterMm), halfHeightMetres: 0, beam: lambertianBeam };
    case 'tube':
      return { shape: 'tube', halfWidthMetres: metres(lamp.lengthMm), halfHeightMetres: 0, beam: lambertianBeam };
  }
};

/** Highest intensity per lumen, in candela per lumen. */
export const peakPerLumen = (emitter: Emitter): number => {
  if (emitter.shape === 'sphere') return 1 / (4 * Math.PI);
  if (emitter.shape === 'tube') return 1 / Math.PI ** 2;
  return intensityPerLumen(emitter.beam, 1);
};

/** Flux of a lamp at full level in lumens, whatever the box states: lumens, beam distance, candela or lux at 1 m. */
export const fluxOf = (lamp: Lamp): number => {
  const { output } = lamp;
  const emitter = emitterOf(lamp);
  switch (output.from) {
    case 'lumens':
      return output.lumens;
    case 'beam-distance':
      return peakFromBeamDistance(output.distanceMetres) / peakPerLumen(emitter);
    case 'peak-candela':
      return output.candela / peakPerLumen(emitter);
    case 'lux-at-1-metre':
      return output.lux / peakPerLumen(emitter);
  }
};
