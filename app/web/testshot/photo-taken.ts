import type { NightPhoto } from '../../../core/setup/schema/setup.ts';
import { nightPhotoOf } from '../state/edits/night-photo-edits.ts';
import type { TestShot } from './use-test-shot.ts';

/** The photo that is looked at as the log of nights keeps it; null while there is none. */
export const photoTaken = ({ photo, scheme, frame, lamp, answer }: TestShot, file: File | null): NightPhoto | null => {
  if (!file || !photo.settings) return null;
  const passes = frame.passes.filter(({ lampId }) => lampId === lamp?.id);
  return nightPhotoOf({
    fileName: file.name,
    settings: photo.settings,
    place: { schemeId: scheme.id, frameId: frame.id },
    // of several passes of one lamp, which of them lit the spot is not known
    passId: (passes.length === 1 && passes[0]?.id) || null,
    overStops: answer && 'compared' in answer ? answer.compared.differenceStops : null,
  });
};
