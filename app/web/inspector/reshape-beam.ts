import type { Beam, Lamp, Setup } from '../../../core/setup/schema/setup.ts';
import { allRoundDegrees, drawnBeamDegrees } from '../ui/beam-width.ts';

/** Range of the document. */
const [leastDegrees, mostDegrees] = [1, 170];
/** What a lamp without optics starts from. */
const openDegrees = 120;

const degreesOf = (lamp: Lamp, files: Setup['measuredBeams']): number => {
  const beam = 'beam' in lamp ? lamp.beam : null;
  if (beam && 'degrees' in beam) return beam.degrees;
  if (beam?.shape === 'spot') return beam.beamDegrees;
  const drawn = drawnBeamDegrees(lamp, files);
  return drawn >= allRoundDegrees ? openDegrees : Math.round(drawn);
};

/** A beam of another shape, about as wide as the one that the lamp has; null where there is no file to take it from. */
export const reshapeBeam = (lamp: Lamp, shape: Beam['shape'], files: Setup['measuredBeams']): Beam | null => {
  const degrees = Math.min(Math.max(degreesOf(lamp, files), leastDegrees), mostDegrees);
  switch (shape) {
    case 'spot':
      return { shape, beamDegrees: degrees, spillDegrees: 100, spillShare: 0.3 };
    case 'flood':
    case 'lobe':
      return { shape, degrees };
    case 'measured':
      return files[0] ? { shape, beamId: files[0].id, turnDegrees: 0 } : null;
    default:
      return { shape };
  }
};
