import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { middleMoment } from '../../../core/readings/moments.ts';
import { type ShadowReading, shadowReading } from '../../../core/readings/shadow-reading.ts';
import type { Lesson, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { footprintOf } from '../ui/footprint.ts';

export type Question = NonNullable<Lesson['steps'][number]['predict']>;

/** What a question about a shadow is answered with. */
export interface TrueShadow {
  readonly shadow: ShadowReading;
  /** Middle of what throws it, from above. */
  readonly foot: GroundPoint;
  readonly subjectName: string;
}

const middleOf = (outline: readonly GroundPoint[]): GroundPoint => {
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return [middle(outline.map(([east]) => east)), middle(outline.map(([, north]) => north))];
};

/**
 * The shadow that is asked for, with the lamp where it is half-way through its time; null when scheme, lamp or subject are
 * gone.
 */
export const trueShadow = (setup: Setup, schemeId: string, { passId, subjectId }: Question): TrueShadow | null => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  if (!scheme) return null;
  const { stage, view, frames } = buildWorld(setup, scheme);
  const light = frames
    .flatMap(({ lights }) => lights)
    .find(({ id, source }) => id === passId && source.kind === 'lamp');
  const subject = stage.subjects.find(({ id }) => id === subjectId);
  if (!light || !subject) return null;
  const shadow = shadowReading(stage, view, subject, middleMoment(light).position);
  return { shadow, foot: middleOf(footprintOf(subject)), subjectName: subject.name };
};
