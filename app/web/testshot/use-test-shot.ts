import { useEffect, useMemo, useState } from 'react';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import type { Camera, Frame, Lamp, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { cutSpot } from '../photo/decode-photo.ts';
import { type Photo, usePhoto } from '../photo/use-photo.ts';
import { useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { takePhotoSettings } from '../state/edits/test-shot-edits.ts';
import type { TestShotWish } from '../state/session.ts';
import { judgeShot, type ShotAnswer, spotRadius } from './judge-shot.ts';

/** How long the crosses must stand still before the spot is judged, milliseconds. */
const stillMilliseconds = 120;

export interface TestShot {
  readonly photo: Photo;
  readonly camera: Camera;
  readonly aspect: number;
  readonly scheme: Scheme;
  readonly frame: Frame;
  /** The same with the exposure of the photo; the same objects where it has it already. */
  readonly setupAsShot: Setup;
  readonly schemeAsShot: Scheme;
  readonly frameAsShot: Frame;
  /** Lamps that shine in the frame, and the one in question. */
  readonly lamps: readonly Lamp[];
  readonly lamp: Lamp | null;
  readonly look: PhotoLook;
  readonly inPhoto: PicturePlace;
  readonly inPicture: PicturePlace;
  /** null while it is being worked out. */
  readonly answer: ShotAnswer | null;
  readonly setFrameId: (id: string) => void;
  readonly setLampId: (id: string) => void;
  readonly setLook: (look: PhotoLook) => void;
  readonly setInPhoto: (place: PicturePlace) => void;
  readonly setInPicture: (place: PicturePlace) => void;
}

/** Where a lamp is aimed, in the picture; the middle where that is out of it. */
const firstPlace = (setup: Setup, scheme: Scheme, frame: Frame, lampId: string | undefined): PicturePlace => {
  const aim = frame.passes.find((pass) => pass.lampId === lampId)?.waypoints[0]?.aim;
  const place = aim ? projectPoint(buildWorld(setup, scheme).view, worldFromDocument(aim)) : null;
  return place?.every((v) => v > 0.03 && v < 0.97) ? place : [0.5, 0.5];
};

/** Everything about a test shot that is looked at. */
export const useTestShot = (file: File | null, wish: TestShotWish): TestShot => {
  const setup = useSetup();
  const scheme = useScheme();
  const shown = useFrame();
  const [frameId, setFrameId] = useState(wish.frameId);
  const [lampId, setLampId] = useState(wish.lampId);
  const [look, setLook] = useState<PhotoLook>('unknown');
  const [photoPlace, setInPhoto] = useState<PicturePlace | null>(null);
  const [picturePlace, setInPicture] = useState<PicturePlace | null>(null);
  const [answer, setAnswer] = useState<ShotAnswer | null>(null);
  const photo = usePhoto(file);
  const frame = scheme.frames.find(({ id }) => id === frameId) ?? shown;
  const lamps = setup.lamps.filter(({ id }) => frame.passes.some((pass) => pass.lampId === id));
  const lamp = lamps.find(({ id }) => id === lampId) ?? lamps[0] ?? null;
  const { settings, picture } = photo;
  const setupAsShot = useMemo(
    () => (settings ? takePhotoSettings(setup, { schemeId: scheme.id, frameId: frame.id }, settings) : setup),
    [setup, scheme.id, frame.id, settings],
  );
  const schemeAsShot = setupAsShot.schemes.find(({ id }) => id === scheme.id) ?? scheme;
  const frameAsShot = schemeAsShot.frames.find(({ id }) => id === frame.id) ?? frame;
  const start = useMemo(() => firstPlace(setup, scheme, frame, lamp?.id), [setup, scheme, frame, lamp?.id]);
  // most test frames are taken as they were rehearsed: the other cross goes along until it is put elsewhere
  const inPhoto = photoPlace ?? picturePlace ?? start;
  const inPicture = picturePlace ?? photoPlace ?? start;
  const [photoX, photoY, pictureX, pictureY] = [...inPhoto, ...inPicture] as [number, number, number, number];
  useEffect(() => {
    setAnswer(null);
    if (!picture || !lamp) return;
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
  }, [picture, lamp, setupAsShot, schemeAsShot, frameAsShot, look, photoX, photoY, pictureX, pictureY]);
  const camera = cameraOf(setup, scheme.id);
  const aspect = camera.sensor.widthMm / camera.sensor.heightMm;
  const places = { inPhoto, inPicture, setInPhoto, setInPicture };
  const asShot = { setupAsShot, schemeAsShot, frameAsShot };
  return {
    photo,
    camera,
    aspect,
    scheme,
    frame,
    ...asShot,
    lamps,
    lamp,
    look,
    ...places,
    answer,
    setFrameId,
    setLampId,
    setLook,
  };
};
