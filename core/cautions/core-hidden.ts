import type { SchemeRule } from './caution.ts';
import { percentText } from './caution-texts.ts';
import { limits } from './limits.ts';
import { isStarFrame } from './star-frame.ts';

/** The camera points at the core of the Milky Way, and land stands before it. */
export const coreHidden: SchemeRule = ({ scheme, world, sky }) => {
  const star = scheme.frames.find((frame) => isStarFrame(scheme, frame));
  if (!sky || !star) return [];
  const { core, sun } = sky.reading;
  const { isCentreInPicture, inPictureShare, hiddenShare, hiddenBy } = sky.region;
  const isMeant =
    isCentreInPicture &&
    inPictureShare >= limits.coreInPictureShare &&
    core.altitudeDegrees > 0 &&
    sun.altitudeDegrees <= limits.sunDegrees.nautical;
  const limit = limits.coreHiddenShare;
  if (!isMeant || hiddenShare === null || hiddenShare <= limit) return [];
  const hider = world.stage.subjects[hiddenBy as number];
  return [
    {
      code: 'core-hidden',
      severity: 'note',
      frameId: star.id,
      message: `${star.name}: the core of the Milky Way, ${core.altitudeDegrees.toFixed(0)}° up, is behind ${hider ? `“${hider.name}”` : 'the land'}: ${percentText(hiddenShare)} of it is hidden. Move the camera aside, or look up under Hour when it stands clear.`,
      value: hiddenShare,
      limit,
    },
  ];
};
