import { bestDose, mostLitSubject } from '../readings/key-to-fill.ts';
import { middleMoment } from '../readings/moments.ts';
import { passSubject } from '../readings/pass-subject.ts';
import { sightOf } from '../readings/sight.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { Pass, Setup } from '../setup/schema/setup.ts';
import { ratioFromStops } from '../units/stops.ts';
import { buildWorld, type WorldFrame, type WorldLight } from '../world/world.ts';
import { dosedCell, plainCell, type SweepCell } from './cell.ts';
import type { FoundPass } from './pass-at.ts';
import { SweepError } from './sweep-error.ts';
import { withDose } from './with-dose.ts';

/** The key of a frame without the pass that is swept, and what that pass does now on the key's subject. */
interface Key {
  readonly name: string;
  readonly doseLuxSeconds: number;
  readonly sweptDoseLuxSeconds: number;
}

/** Finds the key as the frame's reading does, by light on faces alone; nothing else of the passes is read. */
const keyOf = (setup: Setup, { scheme, frame, pass }: FoundPass): Key => {
  const world = buildWorld(setup, { ...scheme, frames: [frame] });
  const { stage, view } = world;
  const lamps = (world.frames[0] as WorldFrame).lights.filter(({ source }) => source.kind === 'lamp');
  const doseOn = (light: WorldLight, subject: number): number | null =>
    bestDose([[light, sightOf(stage, view).faceLight(subject, light.source)]]);
  const onSubject = (passId: string, subjectId: string): number | null =>
    doseOn(
      lamps.find(({ id }) => id === passId) as WorldLight,
      stage.subjects.findIndex(({ id }) => id === subjectId),
    );
  const others = lamps.flatMap((light) => {
    if (light.id === pass.id) return [];
    const { aim } = middleMoment(light);
    const subject = passSubject(world, aim, targetSurface(stage, view.position, aim));
    const subjectId = stage.subjects[subject]?.id ?? null;
    return [{ passId: light.id, subjectId, bestDoseLuxSeconds: doseOn(light, subject) }];
  });
  const lit = mostLitSubject(others, onSubject);
  const key = lit?.doses[0];
  if (!lit || !key)
    throw new SweepError('pass', 'must have a key beside it: another pass of its frame that lights a subject');
  return {
    name: (frame.passes.find(({ id }) => id === key.passId) as Pass).name,
    doseLuxSeconds: key.luxSeconds,
    // the camera sees what the key lights
    sweptDoseLuxSeconds: onSubject(pass.id, lit.subjectId) as number,
  };
};

/** The pass as a fill, so many stops under the key, each at its best on the key's subject. */
export const ratioCells = (setup: Setup, found: FoundPass, stops: readonly number[]): SweepCell[] => {
  const { pass, lamp, frame } = found;
  const { name, doseLuxSeconds, sweptDoseLuxSeconds } = keyOf(setup, found);
  const row = `under ${name}`;
  return stops.map((under, c) => {
    const [id, column] = [`ratios-0-${c}`, `${Number(under.toFixed(2))} ${under === 1 ? 'stop' : 'stops'}`] as const;
    const factor = (doseLuxSeconds * ratioFromStops(-under)) / sweptDoseLuxSeconds;
    if (sweptDoseLuxSeconds > 0) return dosedCell(id, row, column, withDose(pass, lamp, frame, factor));
    const note = `The pass lights less than a twentieth of what “${name}” lights: level and count stay.`;
    return { ...plainCell(id, row, column, pass), note };
  });
};
