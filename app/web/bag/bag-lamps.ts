import { type BagLamp, parseBag } from '../../../core/bag/bag-file.ts';
import type { TappedBeam } from '../../../core/photometry/beam-from-taps.ts';
import { Lm63Error } from '../../../core/photometry/lm63/lm63-error.ts';
import { maxLm63Characters, parseLm63 } from '../../../core/photometry/lm63/parse-lm63.ts';
import { lamp as lampSchema } from '../../../core/setup/schema/lamp.ts';
import type { Lamp, MeasuredBeam } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { maxSetupBytes } from '../../../core/setup/setup-size.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { fluxOf } from '../../../core/world/lamp-light.ts';
import { BeamRefused, beamFromFile } from '../state/beam-from-file.ts';
import { freshName } from '../state/edits/plain-name.ts';
import { measuredAnew, rebasedLamp } from '../state/edits/rebased-lamp.ts';

/** Why a file can't go into the bag: a sentence without its end. */
export class BagRefused extends Error {}

/** A torch that shines as a photometric file says. */
const lampOfPhotometry = (text: string): BagLamp => {
  const beam = beamFromFile(parseLm63(text));
  const own = lampSchema.parse({
    kind: 'torch',
    id: 'torch',
    name: beam.name,
    output: { from: 'measured' },
    beam: { shape: 'measured', beamId: beam.id },
  });
  return { lamp: own, beam };
};

/** Lamps of a file: a bag that was exported, or one lamp of a photometric file. */
export const lampsOfFile = async (file: File): Promise<BagLamp[]> => {
  const isPhotometric = file.name.toLowerCase().endsWith('.ies');
  const most = isPhotometric ? maxLm63Characters : maxSetupBytes;
  if (file.size > most)
    throw new BagRefused(`It has ${(file.size / 1e6).toFixed(1)} MB; at most ${most / 1e6} MB are read`);
  try {
    const text = await file.text();
    return isPhotometric ? [lampOfPhotometry(text)] : parseBag(text);
  } catch (error) {
    if (error instanceof Lm63Error) throw new BagRefused(`Line ${error.line}: ${error.expected}`);
    if (error instanceof SetupError || error instanceof BeamRefused) throw new BagRefused(error.message);
    throw new BagRefused('It could not be read');
  }
};

const degrees = (radians: number, low: number, high: number): number =>
  Number(Math.min(Math.max(degreesFromRadians(radians), low), high).toFixed(1));

/** Four figures, as a box tells them. */
const told = (value: number, low: number, high: number): number =>
  Number(Math.min(Math.max(value, low), high).toPrecision(4));

/**
 * A torch or panel with the beam that three taps found. Lux at the centre measure its output too: photos of before count no
 * more. Without them what is stated stays, and so does what photos found it really to give.
 *
 * @param measured the measured beam that it has
 */
export const withTappedBeam = (own: Lamp, tapped: TappedBeam, measured: MeasuredBeam | null = null): Lamp => {
  if (own.kind !== 'torch' && own.kind !== 'panel') return own;
  const beams = measured ? [measured] : [];
  const { shape, beamRadians, spillRadians, spillShare, peakCandela } = tapped;
  const output =
    peakCandela === null
      ? own.output.from === 'measured'
        ? ({ from: 'lumens', lumens: told(fluxOf(own, beams), 0.001, 1e7) } as const)
        : own.output
      : ({ from: 'peak-candela', candela: told(peakCandela, 0.01, 1e9) } as const);
  const beamDegrees = degrees(beamRadians, 1, 170);
  const beam =
    shape === 'lobe'
      ? ({ shape, degrees: beamDegrees } as const)
      : ({
          shape,
          beamDegrees,
          spillDegrees: degrees(spillRadians, 1, 180),
          spillShare: Number(spillShare.toFixed(3)),
        } as const);
  const changed = { ...own, output, beam };
  return peakCandela === null ? rebasedLamp(own, changed, beams) : measuredAnew(changed);
};

/** What a new lamp measured on a wall starts as. */
export const newTorch = (): Lamp =>
  lampSchema.parse({
    kind: 'torch',
    id: 'torch',
    name: 'My torch',
    output: { from: 'lumens', lumens: 100 },
    lowestLevelPercent: 100,
    temperatureKelvin: 6000,
    beam: { shape: 'spot', beamDegrees: 40 },
  });

/** Another name where the bag has one of that kind so called: "Torch", "Torch 2" … */
export const freshLampName = (taken: readonly Lamp[], { kind, name }: Lamp): string =>
  freshName(
    taken.filter((each) => each.kind === kind).map((each) => each.name),
    name,
  );
