import { coneSolidAngle, evenShareOfSpill, lobePeakPerLumen } from './beam.ts';

/** A lamp’s spot on a flat wall that it is square to, as a tape finds it. */
export interface SpotOnWall {
  /** From the lamp to the wall. */
  readonly distanceMetres: number;
  /** From the bright centre to where the wall is half as bright. */
  readonly halfRadiusMetres: number;
  /** From the bright centre to where the wide spill ends; null = none is seen. */
  readonly edgeRadiusMetres: number | null;
  /** Brightness of the wall just inside that edge, over that of the centre; null = not measured. */
  readonly edgeToCentre: number | null;
  /** Illuminance of the centre of the wall; null = not measured. */
  readonly centreLux: number | null;
}

/** What the three taps come to; the angles are full ones. */
export interface TappedBeam {
  readonly shape: 'spot' | 'lobe';
  /** Of the hot spot, where it has fallen to half. */
  readonly beamRadians: number;
  /** Of the spill; 0 for a lobe. */
  readonly spillRadians: number;
  readonly spillShare: number;
  /** null where no lux was measured. */
  readonly peakCandela: number | null;
}

/** Where the brightness just inside the edge is taken, as a share of the even part. */
export const edgeTapShare = 0.9;
/** Spill of a torch where its brightness was not measured: the document's default. */
const usualSpillShare = 0.3;

/** Half angles past which a wall dims to half by itself: cos^3 = 1/2. */
const widestHalfRadians = Math.acos(0.5 ** (1 / 3));

/**
 * Exponent of a hot spot that, over a spill of `base` (share of the middle's intensity), brings the wall to half at an angle.
 * A wall square to the lamp has I cos^3 / d^2 (inverse square and cosine), so the intensity there is 1 / (2 cos^3).
 */
const exponentFor = (base: number, half: number): number =>
  Math.log((0.5 / Math.cos(half) ** 3 - base) / (1 - base)) / Math.log(Math.cos(half));

/** Flux of the spill over that of the hot spot, for a spill of `base`. */
const fluxRatio = (base: number, exponent: number, spillHalf: number): number => {
  const solid = (coneSolidAngle(Math.cos(spillHalf)) + coneSolidAngle(Math.cos(spillHalf * evenShareOfSpill))) / 2;
  return (base / (1 - base)) * solid * lobePeakPerLumen(exponent);
};

/** Finds where a rising function passes nought, by halving. */
const root = (low: number, high: number, f: (x: number) => number): number => {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};

/**
 * A beam from three taps on a wall: bright centre, half as bright, edge of the spill. A hot spot cos^n over an even spill
 * (`LobeBeam`), such that the wall is half as bright where it was tapped and, where that was measured, as bright just inside
 * the edge. A wide spot is narrower on the wall than in the air: cos^3 is taken out.
 *
 * @returns the beam, or why there is none, a sentence for the screen
 */
export const beamFromTaps = (spot: SpotOnWall): TappedBeam | { readonly refused: string } => {
  const { distanceMetres, halfRadiusMetres, edgeRadiusMetres, edgeToCentre, centreLux } = spot;
  const half = Math.atan2(halfRadiusMetres, distanceMetres);
  const peakCandela = centreLux === null ? null : centreLux * distanceMetres ** 2;
  if (half >= widestHalfRadians)
    return {
      refused:
        'A wall that a bare bulb lights is half as bright already at 0.77 of the distance: this lamp has no beam to speak of. Stand it farther off.',
    };
  if (edgeRadiusMetres === null)
    return {
      shape: 'lobe',
      beamRadians: 2 * halfOf(exponentFor(0, half)),
      spillRadians: 0,
      spillShare: 0,
      peakCandela,
    };
  const spillHalf = Math.atan2(edgeRadiusMetres, distanceMetres);
  if (spillHalf * evenShareOfSpill <= half)
    return {
      refused:
        'The edge must lie farther out than half as bright, by a third at least. Leave it out where there is no spill.',
    };
  const tapped = spillHalf * evenShareOfSpill * edgeTapShare;
  // the spill alone may not be over half at the half tap
  const most = Math.min(0.5 / Math.cos(half) ** 3, 1) * 0.999;
  const miss = (base: number): number => {
    const exponent = exponentFor(base, half);
    if (edgeToCentre === null) {
      const ratio = fluxRatio(base, exponent, spillHalf);
      return ratio / (1 + ratio) - usualSpillShare;
    }
    return base + (1 - base) * Math.cos(tapped) ** exponent - edgeToCentre / Math.cos(tapped) ** 3;
  };
  if (miss(0) > 0)
    return {
      refused:
        'The edge is darker than the hot spot alone makes it: tap half as bright nearer to the centre, or leave the edge out.',
    };
  if (miss(most) < 0) return { refused: 'The edge is too bright for a spill: tap half as bright again.' };
  const base = root(0, most, miss);
  const exponent = exponentFor(base, half);
  const ratio = fluxRatio(base, exponent, spillHalf);
  return {
    shape: 'spot',
    beamRadians: 2 * halfOf(exponent),
    spillRadians: 2 * spillHalf,
    spillShare: ratio / (1 + ratio),
    peakCandela,
  };
};

/** Half angle at which cos^n has fallen to half; the inverse of `exponentFromHalfPeak`. */
const halfOf = (exponent: number): number => Math.acos(0.5 ** (1 / exponent));
