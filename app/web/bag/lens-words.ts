import type { TapLens } from './tap-lens.ts';

/** “62° wide: 30 mm on a sensor of …”: how wide a photo sees, and by what that is known. */
export const lensWords = (
  { lens, degrees, from }: TapLens,
  sensor: { readonly widthMm: number; readonly heightMm: number },
): string => {
  const wide = `${Math.round(degrees)}° wide`;
  if (from === 'typed') return `${wide} as typed`;
  const focal = `${Number(lens.focalLengthMm.toFixed(1))} mm`;
  if (from === 'equivalent') return `${wide} by its equivalent focal length of ${focal} (36 mm wide)`;
  return `${wide}: ${focal} on a sensor of ${sensor.widthMm} × ${sensor.heightMm} mm, as the setup’s camera has it`;
};
