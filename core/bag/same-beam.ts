import type { MeasuredBeam } from '../setup/schema/setup.ts';

/** Whether two measured beams are the same but for their ids: name, angles and candela. */
export const isSameBeam = (a: MeasuredBeam, b: MeasuredBeam): boolean =>
  a === b || JSON.stringify({ ...a, id: '' }) === JSON.stringify({ ...b, id: '' });
