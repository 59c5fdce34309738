import { beamAngleRadians } from '../../../core/photometry/beam-angle.ts';
import type { Lamp, MeasuredBeam } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';

/** Widths of lamps already worked out; lamps of the document never change. */
const known = new WeakMap<Lamp, number>();

const [openDegrees, widestDegrees] = [120, 150];

/** How wide a lamp's beam is drawn, full angle in degrees; 120 for lamps without optics, which have no edge. */
export const drawnBeamDegrees = (lamp: Lamp, measured: readonly MeasuredBeam[]): number => {
  const width = known.get(lamp) ?? widthOf(lamp, measured);
  known.set(lamp, width);
  return width;
};

const widthOf = (lamp: Lamp, measured: readonly MeasuredBeam[]): number => {
  if (!('beam' in lamp)) return openDegrees;
  const { beam } = lamp;
  if (beam.shape === 'spot') return Math.min(beam.beamDegrees, widestDegrees);
  if (beam.shape === 'flood') return Math.min(beam.degrees, widestDegrees);
  const angle = beamAngleRadians(emitterOf(lamp, measured));
  return angle === null ? openDegrees : Math.min(degreesFromRadians(angle), widestDegrees);
};
