import {
  type Beam,
  type MeasuredBeam as BeamOfFile,
  evenBeam,
  evenShareOfSpill,
  exponentFromHalfPeak,
  lambertianBeam,
  peakFromBeamDistance,
} from '../photometry/beam.ts';
import { type Distribution, distributionOf } from '../photometry/distribution.ts';
import { type Emitter, emitterPeakPerLumen } from '../photometry/emitter.ts';
import { measuredBeam } from '../photometry/measured-beam.ts';
import { luxAtOneMetrePerLumen } from '../photometry/open-light.ts';
import type { Beam as BeamField, Lamp, MeasuredBeam, Pass } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { ratioFromStops } from '../units/stops.ts';

const cosHalf = (fullDegrees: number) => Math.cos(radiansFromDegrees(fullDegrees / 2));

/** Distributions already built, by the document's own objects, which never change. */
const built = new WeakMap<MeasuredBeam, Distribution>();

const distributionFrom = (field: MeasuredBeam): Distribution => {
  const distribution = built.get(field) ?? distributionOf(field);
  built.set(field, distribution);
  return distribution;
};

const beamOf = (beam: BeamField, measured: readonly MeasuredBeam[]): Beam => {
  switch (beam.shape) {
    case 'open':
      return lambertianBeam;
    case 'even':
      return evenBeam;
    case 'flood':
      return { exponent: 1, cosSpill: cosHalf(beam.degrees), cosSpillEven: cosHalf(beam.degrees), spillShare: 1 };
    case 'lobe':
      return { ...lambertianBeam, exponent: exponentFromHalfPeak(radiansFromDegrees(beam.degrees / 2)) };
    case 'spot':
      return {
        exponent: exponentFromHalfPeak(radiansFromDegrees(beam.beamDegrees / 2)),
        cosSpill: cosHalf(beam.spillDegrees),
        cosSpillEven: cosHalf(beam.spillDegrees * evenShareOfSpill),
        spillShare: beam.spillShare,
      };
    case 'measured': {
      const field = measured.find(({ id }) => id === beam.beamId);
      if (!field) throw new Error(`no measured beam has the id "${beam.beamId}"`);
      return measuredBeam(distributionFrom(field), radiansFromDegrees(beam.turnDegrees));
    }
  }
};

/**
 * The shining part of a bare lamp, in metres.
 *
 * @param measured the setup's measured beams, for a lamp that has one
 */
export const emitterOf = (lamp: Lamp, measured: readonly MeasuredBeam[] = []): Emitter => {
  const metres = (mm: number) => mm / 2000;
  const beam = 'beam' in lamp ? beamOf(lamp.beam, measured) : lambertianBeam;
  switch (lamp.kind) {
    case 'torch':
      return { shape: 'disc', halfWidthMetres: metres(lamp.diameterMm), halfHeightMetres: 0, beam };
    case 'panel':
      return {
        shape: 'rectangle',
        halfWidthMetres: metres(lamp.widthMm),
        halfHeightMetres: metres(lamp.heightMm),
        beam,
      };
    case 'lantern':
      return { shape: 'sphere', halfWidthMetres: metres(lamp.diameterMm), halfHeightMetres: 0, beam };
    case 'tube':
      return { shape: 'tube', halfWidthMetres: metres(lamp.lengthMm), halfHeightMetres: metres(lamp.diameterMm), beam };
    case 'point':
      return { shape: 'point', halfWidthMetres: 0, halfHeightMetres: 0, beam };
  }
};

/** An emitter with what a pass hangs in front of it. */
export const dressedEmitter = (bare: Emitter, { cloth, snootDegrees }: Pass): Emitter => {
  const spreadShare = cloth?.spreadShare ?? 0;
  if (spreadShare === 0 && snootDegrees === null) return bare;
  return { ...bare, front: { spreadShare, cosSnoot: snootDegrees === null ? -1 : cosHalf(snootDegrees) } };
};

/** Flux of a lamp at full level in lumens, whatever the box states: lumens, beam distance, candela, lux at 1 m or a file. */
export const fluxOf = (lamp: Lamp, measured: readonly MeasuredBeam[] = []): number => {
  const { output } = lamp;
  const { beam, ...emitter } = emitterOf(lamp, measured);
  const peak = emitterPeakPerLumen({ beam, ...emitter });
  switch (output.from) {
    case 'lumens':
      return output.lumens;
    case 'beam-distance':
      return peakFromBeamDistance(output.distanceMetres) / peak;
    case 'peak-candela':
      return output.candela / peak;
    case 'lux-at-1-metre':
      // a large lamp is no point at one metre: what the meter there really sees
      return output.lux / luxAtOneMetrePerLumen(emitterOf(lamp, measured));
    case 'measured':
      // the parser takes it with a measured beam alone
      return 1 / (beam as BeamOfFile).perLumen;
  }
};

/** Flux that a lamp really gives at full level, in lumens: that of its box, put right by what test shots found. */
export const realFluxOf = (lamp: Lamp, measured: readonly MeasuredBeam[] = []): number =>
  fluxOf(lamp, measured) * ratioFromStops(lamp.correctionStops);
