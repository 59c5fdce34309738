import type { Setup, Walking } from '../../../../core/setup/schema/setup.ts';

/** Changes how whoever holds the lamps walks and looks. The same setup where nothing changes. */
export const setWalking = (setup: Setup, part: Partial<Walking>): Setup => {
  const walking = { ...setup.walking, ...part };
  const isSame =
    walking.metresPerSecond === setup.walking.metresPerSecond &&
    walking.keepsOutOfPicture === setup.walking.keepsOutOfPicture &&
    walking.paceMetres === setup.walking.paceMetres &&
    walking.clothes === setup.walking.clothes;
  return isSame ? setup : { ...setup, walking };
};
