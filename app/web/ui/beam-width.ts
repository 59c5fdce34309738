import type { Lamp } from '../../../core/setup/schema/setup.ts';

/** How wide a lamp's beam is drawn, full angle in degrees; 120 for lamps without optics or with a measured beam, which have no edge. */
export const drawnBeamDegrees = (lamp: Lamp): number => {
  if (!('beam' in lamp)) return 120;
  const { beam } = lamp;
  if (beam.shape === 'spot') return Math.min(beam.beamDegrees, 150);
  return beam.shape === 'flood' || beam.shape === 'lobe' ? Math.min(beam.degrees, 150) : 120;
};
