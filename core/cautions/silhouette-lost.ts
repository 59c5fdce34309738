import type { OutlineReading } from '../readings/outline-reading.ts';
import type { StageSubject } from '../world/stage.ts';
import { type BlendPart, blendParts } from './blend-parts.ts';
import { blendedStops } from './blended-stops.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** Of a subject before the sky, which it is in all frames or in none. */
const readingOf = ({ outlines }: BlendPart, id: string): OutlineReading =>
  outlines.find(({ subjectId }) => subjectId === id) as OutlineReading;

/** Whether a lamp of the frame shows on a subject: on its face, or as a rim. */
const isLamplit = (part: BlendPart, id: string): boolean => {
  const { unlitStops, litStops } = readingOf(part, id);
  const isFaceLit =
    litStops !== null &&
    litStops > limits.tooDarkStops &&
    (unlitStops === null || litStops - unlitStops > limits.silhouetteStops);
  const isRimmed = part.passes.some(
    ({ reading: { rim } }) => rim.subjectId === id && (rim.litShare as number) >= limits.rimmedShare,
  );
  return isFaceLit || isRimmed;
};

/** A subject that no lamp lights is as bright as the sky behind it: neither a silhouette nor lit. */
export const silhouetteLost: SchemeRule = (schemeCase) => {
  const { scheme, world } = schemeCase;
  const parts = blendParts(schemeCase);
  const skies = parts.filter(({ hasSky }) => hasSky);
  const [first] = skies;
  if (!first) return [];
  return first.outlines.flatMap(({ subjectId, skyShare }) => {
    const at = world.stage.subjects.findIndex(({ id }) => id === subjectId);
    const { name } = world.stage.subjects[at] as StageSubject;
    const there = parts.filter(({ counts }) => counts(at));
    if (skyShare < limits.silhouetteShare || there.some((part) => isLamplit(part, subjectId))) return [];
    const sky = blendedStops(scheme.blend.mode, skies, (part) => readingOf(part, subjectId).skyStops);
    const own = blendedStops(scheme.blend.mode, there, (part) => readingOf(part, subjectId).unlitStops);
    const value = Math.abs(sky - own);
    const limit = limits.silhouetteStops;
    // where both are lost in the night there is no outline to lose
    if (!(value < limit) || Math.max(sky, own) < limits.tooDarkStops) return [];
    return [
      {
        code: 'silhouette-lost',
        severity: 'note' as const,
        frameId: first.frame.id,
        message: `“${name}” is as bright as the sky behind it, ${value.toFixed(1)} stops apart: its outline is lost. Light it, rim it from behind, or put the camera where brighter sky stands behind it.`,
        value,
        limit,
      },
    ];
  });
};
