import { reportPass } from '../cautions/setup-report.ts';
import { bestDose } from '../readings/key-to-fill.ts';
import type { PassReading } from '../readings/pass-reading.ts';
import { sightOf } from '../readings/sight.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { ratioFromStops } from '../units/stops.ts';
import { buildWorld, type WorldLight } from '../world/world.ts';
import { dosedCell, plainCell, type SweepCell } from './cell.ts';
import type { FoundPass } from './pass-at.ts';
import { SweepError } from './sweep-error.ts';
import { withDose } from './with-dose.ts';

/** A pass's reading where it does something. */
interface Key {
  readonly reading: PassReading;
  readonly doseLuxSeconds: number;
}

/** The strongest of the frame's other passes, each at its best on its own subject, as `keyToFill` judges them. */
const keyOf = (setup: Setup, { scheme, frame, pass }: FoundPass): Key => {
  const others = frame.passes.filter((each) => each !== pass);
  const keys = others.flatMap(({ id }): Key[] => {
    const reading = reportPass(setup, scheme, frame.id, id)?.reading;
    const doseLuxSeconds = reading?.bestDoseLuxSeconds ?? 0;
    return reading?.rim.subjectId && doseLuxSeconds > 0 ? [{ reading, doseLuxSeconds }] : [];
  });
  const [first, ...rest] = keys;
  if (!first)
    throw new SweepError('pass', 'must have a key beside it: another pass of its frame that lights a subject');
  return rest.reduce((best, next) => (next.doseLuxSeconds > best.doseLuxSeconds ? next : best), first);
};

/** Best dose of the pass on the face of a subject, lux seconds, as it is set now. */
const doseOn = (setup: Setup, { scheme, frame, pass }: FoundPass, subjectId: string): number => {
  const { stage, view, frames } = buildWorld(setup, { ...scheme, frames: [{ ...frame, passes: [pass] }] });
  const light = frames[0]?.lights[0] as WorldLight;
  const subject = stage.subjects.findIndex(({ id }) => id === subjectId);
  return bestDose([[light, sightOf(stage, view).faceLight(subject, light.source)]]) ?? 0;
};

/** The pass as a fill, so many stops under the key, each at its best on the key's subject. */
export const ratioCells = (setup: Setup, found: FoundPass, stops: readonly number[]): SweepCell[] => {
  const { pass, lamp, frame } = found;
  const { reading, doseLuxSeconds } = keyOf(setup, found);
  const key = frame.passes.find(({ id }) => id === reading.passId);
  const row = `under ${key?.name}`;
  const now = doseOn(setup, found, reading.rim.subjectId as string);
  return stops.map((under, c) => {
    const [id, column] = [`ratios-0-${c}`, `${Number(under.toFixed(2))} ${under === 1 ? 'stop' : 'stops'}`] as const;
    if (now > 0)
      return dosedCell(id, row, column, withDose(pass, lamp, frame, (doseLuxSeconds * ratioFromStops(-under)) / now));
    const note = `The pass lights less than a twentieth of what “${key?.name}” lights: level and count stay.`;
    return { ...plainCell(id, row, column, pass), note };
  });
};
