import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useSetup } from '../state/app-store.ts';

/** What the two level axes of a setup are called. Where its north is turned they are not those of the compass, and say so. */
export const axisWords = ({
  northDegrees,
}: Pick<Setup['place'], 'northDegrees'>): { readonly east: string; readonly north: string } =>
  northDegrees % 360 === 0 ? { east: 'East', north: 'North' } : { east: 'Scene’s east', north: 'Scene’s north' };

export const useAxisWords = () => axisWords(useSetup().place);
