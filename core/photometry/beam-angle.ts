import { isMeasured } from './beam.ts';
import type { Distribution } from './distribution.ts';
import type { Emitter } from './emitter.ts';
import { halfPeakAngle } from './half-peak-angle.ts';
import { type HalfPlanes, halfPlanesOf } from './half-planes.ts';

/** How wide a lamp's beam is, as dressed. */
export interface BeamWidth {
  /** Highest intensity in candela per lumen, over all half planes; 0 when a snoot stops everything. */
  readonly peakPerLumen: number;
  /** Full angle between the halves of the peak in radians, 0 to 2 pi; null when no half plane has half the peak in front. */
  readonly fullRadians: number | null;
}

/** From here on a lamp counts as shining all round. */
const widest = (170 * Math.PI) / 180;

const peakOver = ({ roundRadians, at }: HalfPlanes): number => {
  let peak = 0;
  for (const round of roundRadians) {
    const plane = at(round);
    for (let stretch = 0; stretch + 1 < plane.edges.length; stretch++)
      peak = Math.max(peak, plane.at(stretch, plane.topOf(stretch)));
  }
  return peak;
};

/** Widths of bare files, which take milliseconds for large ones and are drawn again and again. */
const known = new WeakMap<Distribution, BeamWidth>();

const widthOver = (planes: HalfPlanes, peakPerLumen: number): BeamWidth => {
  if (peakPerLumen === 0) return { peakPerLumen, fullRadians: null };
  const halves = planes.roundRadians.map((round) => halfPeakAngle(planes.at(round), peakPerLumen));
  if (halves.every((half) => half === null)) return { peakPerLumen, fullRadians: null };
  const mean = halves.reduce<number>((sum, half, i) => sum + (half ?? 0) * (planes.shares[i] as number), 0);
  return { peakPerLumen, fullRadians: 2 * mean };
};

/**
 * Peak and width of a beam. The width is the mean round the circle of the angle from half the peak on one side to half
 * the peak on the other; a half plane without half the peak in front adds nothing. Planes are those of the beam itself,
 * so turning the lamp changes nothing.
 */
export const beamWidth = (emitter: Emitter): BeamWidth => {
  const { beam, front, shape } = emitter;
  const isFile = isMeasured(beam) && shape !== 'sphere' && shape !== 'tube';
  const planes = halfPlanesOf(emitter);
  const isDressed = front && (front.spreadShare > 0 || front.cosSnoot > -1);
  if (!isFile || isDressed) return widthOver(planes, peakOver(planes));
  const width = known.get(beam.distribution) ?? widthOver(planes, beam.peakPerLumen);
  known.set(beam.distribution, width);
  return width;
};

/**
 * Full angle in radians where a lamp's intensity, as dressed, has fallen to half its peak: see `beamWidth`. Null for
 * lamps that shine all round (wider than 170 degrees) and for those with less than half their peak in front.
 */
export const beamAngleRadians = (emitter: Emitter): number | null => {
  const { fullRadians } = beamWidth(emitter);
  return fullRadians !== null && fullRadians <= widest + 1e-9 ? fullRadians : null;
};
