import type { Pass } from '../setup/schema/setup.ts';
import { retimedPass } from './retimed-pass.ts';

/**
 * A pass that is lit from one time to another, its way moved and stretched with it, whatever its path: where that can't be
 * cut to the time that it was lit, it stays, and the lamp is switched off on its way.
 *
 * @param on seconds after the shutter opens; `off` is later
 */
export const litFrom = (pass: Pass, on: number, off: number): Pass =>
  on === pass.on && off === pass.off ? pass : (retimedPass(pass, on, off) ?? { ...pass, on, off });
