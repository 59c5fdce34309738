import { useMemo, useState } from 'react';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';

/** The two crosses on one spot: in the photo, and in the picture as rehearsed. */
export interface Crosses {
  readonly inPhoto: PicturePlace;
  readonly inPicture: PicturePlace;
  /** Whether the user has pointed at a spot. */
  readonly isPointed: boolean;
  readonly setInPhoto: (place: PicturePlace) => void;
  readonly setInPicture: (place: PicturePlace) => void;
}

/** Where a lamp is aimed, in the picture; the middle where that is out of it. */
const firstPlace = (setup: Setup, scheme: Scheme, frame: Frame, lampId: string | undefined): PicturePlace => {
  const aim = frame.passes.find((pass) => pass.lampId === lampId)?.waypoints[0]?.aim;
  const place = aim ? projectPoint(buildWorld(setup, scheme).view, worldFromDocument(aim)) : null;
  return place?.every((v) => v > 0.03 && v < 0.97) ? place : [0.5, 0.5];
};

/** Where the crosses stand: to begin with, where the lamp is aimed. */
export const useCrosses = (setup: Setup, scheme: Scheme, frame: Frame, lampId: string | undefined): Crosses => {
  const [photoPlace, setInPhoto] = useState<PicturePlace | null>(null);
  const [picturePlace, setInPicture] = useState<PicturePlace | null>(null);
  const start = useMemo(() => firstPlace(setup, scheme, frame, lampId), [setup, scheme, frame, lampId]);
  return {
    // most test frames are taken as they were rehearsed: the other cross goes along until it is put elsewhere
    inPhoto: photoPlace ?? picturePlace ?? start,
    inPicture: picturePlace ?? photoPlace ?? start,
    isPointed: photoPlace !== null || picturePlace !== null,
    setInPhoto,
    setInPicture,
  };
};
