import { useEffect, useState } from 'react';
import type { Lamp } from '../../../core/setup/schema/setup.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { cutSpot } from '../photo/decode-photo.ts';
import type { Photo } from '../photo/use-photo.ts';
import { judgeShot, type ShotAnswer, spotRadius } from './judge-shot.ts';
import type { AsShot } from './use-as-shot.ts';
import type { Crosses } from './use-crosses.ts';

/** How long the crosses must stand still before the spot is judged, milliseconds. */
const stillMilliseconds = 120;

interface ShotAsked {
  readonly asShot: AsShot;
  readonly crosses: Crosses;
  /** The photo’s. */
  readonly picture: Photo['picture'];
  readonly lamp: Lamp | null;
  readonly look: PhotoLook;
  /** Whether the frame as rehearsed is there to point at. */
  readonly isDrawn: boolean;
}

/** What the spot under the crosses says; null while it is being worked out, and before a spot is pointed at. */
export const useShotAnswer = ({ asShot, crosses, picture, lamp, look, isDrawn }: ShotAsked): ShotAnswer | null => {
  const [answer, setAnswer] = useState<ShotAnswer | null>(null);
  const { setupAsShot, schemeAsShot, frameAsShot } = asShot;
  const { inPhoto, inPicture, isPointed } = crosses;
  const [photoX, photoY, pictureX, pictureY] = [...inPhoto, ...inPicture] as [number, number, number, number];
  useEffect(() => {
    setAnswer(null);
    if (!picture || !lamp || !isPointed || !isDrawn) return;
    const timer = setTimeout(() => {
      const patch = cutSpot(picture, [photoX, photoY], spotRadius);
      setAnswer(
        judgeShot({
          setup: setupAsShot,
          scheme: schemeAsShot,
          frame: frameAsShot,
          lampId: lamp.id,
          look,
          inPicture: [pictureX, pictureY],
          patch,
        }),
      );
    }, stillMilliseconds);
    return () => clearTimeout(timer);
  }, [
    picture,
    lamp,
    setupAsShot,
    schemeAsShot,
    frameAsShot,
    look,
    isPointed,
    isDrawn,
    photoX,
    photoY,
    pictureX,
    pictureY,
  ]);
  return answer;
};
