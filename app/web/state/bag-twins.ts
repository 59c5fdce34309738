import type { BagLamp } from '../../../core/bag/bag-file.ts';
import { isSameBeam } from '../../../core/bag/same-beam.ts';
import type { Lamp, MeasuredBeam, Setup } from '../../../core/setup/schema/setup.ts';
import { fluxOf } from '../../../core/world/lamp-light.ts';
import type { KeptLamp } from '../storage/records.ts';
import { isSameName } from './edits/plain-name.ts';

/** The measured beam that a lamp of a setup has. */
export const beamOfLamp = ({ measuredBeams }: Setup, lamp: Lamp): MeasuredBeam | null =>
  ('beam' in lamp &&
    lamp.beam.shape === 'measured' &&
    measuredBeams.find(({ id }) => id === (lamp.beam as { beamId: string }).beamId)) ||
  null;

/** Lumens that a lamp with its beam is stated to give. */
export const statedLumens = ({ lamp, beam }: BagLamp): number => fluxOf(lamp, beam ? [beam] : []);

const plainBeam = (lamp: Lamp): string =>
  'beam' in lamp
    ? JSON.stringify(lamp.beam.shape === 'measured' ? { ...lamp.beam, beamId: '' } : lamp.beam)
    : 'no beam of its own';

const areBeamsSame = (a: BagLamp, b: BagLamp): boolean =>
  plainBeam(a.lamp) === plainBeam(b.lamp) && (a.beam && b.beam ? isSameBeam(a.beam, b.beam) : a.beam === b.beam);

/** What two tellings of one output may differ by: a box told to four figures another way. */
const mostOff = 0.002;

/** Whether two lamps are stated to give the same light: as many lumens, in the same beam. */
export const isStatedAlike = (a: BagLamp, b: BagLamp): boolean =>
  areBeamsSame(a, b) && Math.abs(statedLumens(a) / statedLumens(b) - 1) < mostOff;

/** A lamp of the bag that a lamp of a setup goes by the name of. */
export interface Twin {
  readonly kept: KeptLamp;
  /** Whether it is stated to give the same light too: then it is the same lamp; else only the user knows. */
  readonly isAlike: boolean;
}

/** The lamp of the bag of that kind and name: one that is stated to give the same light before one that is not. */
export const twinOf = (lamps: readonly KeptLamp[] | null, own: BagLamp): Twin | null => {
  const namesakes = (lamps ?? []).filter(
    ({ lamp }) => lamp.kind === own.lamp.kind && isSameName(lamp.name, own.lamp.name),
  );
  const alike = namesakes.find((kept) => isStatedAlike(kept, own));
  const kept = alike ?? namesakes[0];
  return kept ? { kept, isAlike: alike !== undefined } : null;
};

/** Whether two lamps are the same but for their ids, measured beams and all. */
export const isSameLamp = (a: BagLamp, b: BagLamp): boolean => {
  const text = ({ lamp }: BagLamp) => JSON.stringify({ ...lamp, id: '', ...('beam' in lamp ? { beam: '' } : {}) });
  return text(a) === text(b) && areBeamsSame(a, b);
};
