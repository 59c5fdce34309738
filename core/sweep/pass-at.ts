import type { Camera, Frame, Lamp, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { SweepError } from './sweep-error.ts';

/** Where a pass is in a setup. */
export interface PassPlace {
  readonly schemeId: string;
  readonly frameId: string;
  readonly passId: string;
}

/** A pass with all that belongs to it in the document. */
export interface FoundPass {
  readonly scheme: Scheme;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  /** The scheme's own, else the setup's. */
  readonly camera: Camera;
}

/** Finds a pass by its ids. Throws `SweepError` when a scheme, frame or pass is not there. */
export const passAt = (setup: Setup, { schemeId, frameId, passId }: PassPlace): FoundPass => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  if (!scheme) throw new SweepError('pass', `must be in a scheme of the setup; there is no scheme "${schemeId}"`);
  const frame = scheme.frames.find(({ id }) => id === frameId);
  if (!frame) throw new SweepError('pass', `must be in a frame of the scheme; there is no frame "${frameId}"`);
  const pass = frame.passes.find(({ id }) => id === passId);
  if (!pass) throw new SweepError('pass', `must be one of the frame; there is no pass "${passId}"`);
  const lamp = setup.lamps.find(({ id }) => id === pass.lampId) as Lamp;
  return { scheme, frame, pass, lamp, camera: scheme.camera ?? setup.camera };
};
