import type { Lamp } from '../../../core/setup/schema/setup.ts';

/** How wide a lamp's beam is drawn, full angle in degrees; 120 for lamps without optics, which have no edge. */
export const drawnBeamDegrees = (lamp: Lamp): number => {
  if (lamp.kind !== 'torch' && lamp.kind !== 'panel') return 120;
  const { beam } = lamp;
  if (beam.shape === 'open') return 120;
  return Math.min(beam.shape === 'spot' ? beam.beamDegrees : beam.degrees, 150);
};
