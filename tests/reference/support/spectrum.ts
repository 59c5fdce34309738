import { readFileSync } from 'node:fs';
import { type Chromaticity, chromaticityFromXyz } from '../../../core/colour/chromaticity.ts';
import { cie1931 } from '../../../core/colour/cie-1931.ts';
import type { Triple } from '../../../core/colour/matrix.ts';

/** Relative power in steps of 5 nm from `startNm`. */
export interface Spectrum {
  readonly startNm: number;
  readonly power: readonly number[];
}

/** A spectrum from tests/reference/data: lines of # are remarks, the first number is the first wavelength in nm. */
export const readSpectrum = (name: string): Spectrum => {
  const text = readFileSync(new URL(`../data/${name}.txt`, import.meta.url), 'utf8').replace(/^#.*$/gm, '');
  const [startNm, ...power] = text.trim().split(/\s+/).map(Number);
  if (startNm === undefined || ![startNm, ...power].every(Number.isFinite)) throw new Error(`${name}: not a spectrum`);
  return { startNm, power };
};

/** Chromaticity of a spectrum for the CIE 1931 observer, summed over the wavelengths that it has. */
export const chromaticityOfSpectrum = ({ startNm, power }: Spectrum): Chromaticity => {
  const first = (startNm - cie1931.startNm) / cie1931.stepNm;
  const sum = (matching: readonly number[]) =>
    power.reduce((total, value, i) => total + value * (matching[first + i] as number), 0);
  const xyz: Triple = [sum(cie1931.x), sum(cie1931.y), sum(cie1931.z)];
  return chromaticityFromXyz(xyz);
};
