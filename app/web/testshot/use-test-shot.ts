import { useState } from 'react';
import type { Camera, Frame, Lamp, Scheme } from '../../../core/setup/schema/setup.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { type Photo, usePhoto } from '../photo/use-photo.ts';
import { useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import type { TestShotWish } from '../state/session.ts';
import type { ShotAnswer } from './judge-shot.ts';
import { type AsShot, useAsShot } from './use-as-shot.ts';
import { type Crosses, useCrosses } from './use-crosses.ts';
import { type FramePicture, useFramePicture } from './use-frame-picture.ts';
import { useShotAnswer } from './use-shot-answer.ts';

/** A test shot, with the frame that it is of and the spot that is looked at. */
export interface TestShot extends AsShot, Crosses {
  readonly photo: Photo;
  readonly camera: Camera;
  readonly aspect: number;
  readonly scheme: Scheme;
  readonly frame: Frame;
  /** The frame as shot, rehearsed; until there is a picture no cross is put on it, and no spot judged. */
  readonly framePicture: FramePicture;
  /** Lamps that shine in the frame, and the one in question. */
  readonly lamps: readonly Lamp[];
  readonly lamp: Lamp | null;
  readonly look: PhotoLook;
  /** null while it is being worked out, and before a spot is pointed at. */
  readonly answer: ShotAnswer | null;
  readonly setFrameId: (id: string) => void;
  readonly setLampId: (id: string) => void;
  readonly setLook: (look: PhotoLook) => void;
}

/** Everything about a test shot that is looked at. */
export const useTestShot = (file: File | null, wish: TestShotWish): TestShot => {
  const setup = useSetup();
  const scheme = useScheme();
  const shown = useFrame();
  const [frameId, setFrameId] = useState(wish.frameId);
  const [lampId, setLampId] = useState(wish.lampId);
  const [look, setLook] = useState<PhotoLook>('unknown');
  const photo = usePhoto(file);
  const frame = scheme.frames.find(({ id }) => id === frameId) ?? shown;
  const lamps = setup.lamps.filter(({ id }) => frame.passes.some((pass) => pass.lampId === id));
  const lamp = lamps.find(({ id }) => id === lampId) ?? lamps[0] ?? null;
  const { settings, picture } = photo;
  const asShot = useAsShot(setup, scheme, frame, lamp, settings);
  const camera = cameraOf(setup, scheme.id);
  const aspect = camera.sensor.widthMm / camera.sensor.heightMm;
  const { setupAsShot, schemeAsShot, frameAsShot } = asShot;
  const framePicture = useFramePicture(setupAsShot, schemeAsShot, frameAsShot, aspect, picture !== null);
  const isDrawn = framePicture.picture !== null;
  const crosses = useCrosses(setup, scheme, frame, lamp?.id);
  const answer = useShotAnswer({ asShot, crosses, picture, lamp, look, isDrawn });
  return {
    photo,
    camera,
    aspect,
    scheme,
    frame,
    ...asShot,
    framePicture,
    lamps,
    lamp,
    look,
    ...crosses,
    answer,
    setFrameId,
    setLampId,
    setLook,
  };
};
