import type { BagLamp } from '../../../../core/bag/bag-file.ts';
import type { TestShot } from '../../../../core/setup/schema/setup.ts';
import type { KeptLamp } from '../../storage/records.ts';
import { statedLumens } from '../bag-twins.ts';
import { withTestShot } from './lamp-shots.ts';

/**
 * A kept lamp corrected by one more test shot of a lamp of a setup. The shot is told against what is stated of that one; it is
 * told anew against what is stated of the kept one, so that both really give the same.
 */
export const correctedKept = (kept: KeptLamp, own: BagLamp, shot: TestShot): KeptLamp => ({
  ...kept,
  lamp: withTestShot(kept.lamp, { ...shot, stops: shot.stops + Math.log2(statedLumens(own) / statedLumens(kept)) }),
  keptAt: Date.now(),
});
