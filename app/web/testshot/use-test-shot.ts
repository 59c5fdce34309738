import { useEffect, useMemo, useState } from 'react';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import type { Camera, Frame, Lamp, Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { cutSpot } from '../photo/decode-photo.ts';
import { type Photo, usePhoto } from '../photo/use-photo.ts';
import { useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { loggedCount } from '../state/edits/night-photo-edits.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { type HeldCount, takeCounts, takePhotoSettings } from '../state/edits/test-shot-edits.ts';
import type { TestShotWish } from '../state/session.ts';
import { judgeShot, type ShotAnswer, spotRadius } from './judge-shot.ts';
import { type FramePicture, useFramePicture } from './use-frame-picture.ts';

/** How long the crosses must stand still before the spot is judged, milliseconds. */
const stillMilliseconds = 120;

export interface TestShot {
  readonly photo: Photo;
  readonly camera: Camera;
  readonly aspect: number;
  readonly scheme: Scheme;
  readonly frame: Frame;
  /** Whether the frame has the exposure of the photo. */
  readonly isTaken: boolean;
  /** The lamp's passes in the hand, and how long it was really on in each. */
  readonly held: readonly { readonly pass: Pass; readonly seconds: number }[];
  /** The same with the exposure of the photo and the counts held; the same objects where it has them already. */
  readonly setupAsShot: Setup;
  readonly schemeAsShot: Scheme;
  readonly frameAsShot: Frame;
  /** That frame as rehearsed; until there is a picture no cross is put on it, and no spot judged. */
  readonly framePicture: FramePicture;
  /** Lamps that shine in the frame, and the one in question. */
  readonly lamps: readonly Lamp[];
  readonly lamp: Lamp | null;
  readonly look: PhotoLook;
  readonly inPhoto: PicturePlace;
  readonly inPicture: PicturePlace;
  /** Whether the user has pointed at a spot. */
  readonly isPointed: boolean;
  /** null while it is being worked out, and before a spot is pointed at. */
  readonly answer: ShotAnswer | null;
  readonly setFrameId: (id: string) => void;
  readonly setLampId: (id: string) => void;
  readonly setHeld: (passId: string, seconds: number) => void;
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
  const [typed, setTyped] = useState<Readonly<Record<string, number>>>({});
  const [answer, setAnswer] = useState<ShotAnswer | null>(null);
  const photo = usePhoto(file);
  const frame = scheme.frames.find(({ id }) => id === frameId) ?? shown;
  const lamps = setup.lamps.filter(({ id }) => frame.passes.some((pass) => pass.lampId === id));
  const lamp = lamps.find(({ id }) => id === lampId) ?? lamps[0] ?? null;
  const { settings, picture } = photo;
  const exposed = useMemo(
    () => (settings ? takePhotoSettings(setup, { schemeId: scheme.id, frameId: frame.id }, settings) : setup),
    [setup, scheme.id, frame.id, settings],
  );
  const held = useMemo(
    () =>
      frame.passes
        .filter((pass) => pass.lampId === lamp?.id && pass.held === 'hand')
        .map((pass) => {
          const logged = settings?.at ? loggedCount(setup, scheme.id, pass.id, settings.at) : null;
          return { pass, seconds: typed[pass.id] ?? logged ?? pass.off - pass.on };
        }),
    [setup, scheme.id, frame, lamp?.id, settings, typed],
  );
  const setupAsShot = useMemo(() => {
    const counts: HeldCount[] = held.map(({ pass, seconds }) => ({ passId: pass.id, seconds }));
    return takeCounts(exposed, { schemeId: scheme.id, frameId: frame.id }, counts);
  }, [exposed, held, scheme.id, frame.id]);
  const schemeAsShot = setupAsShot.schemes.find(({ id }) => id === scheme.id) ?? scheme;
  const frameAsShot = schemeAsShot.frames.find(({ id }) => id === frame.id) ?? frame;
  const camera = cameraOf(setup, scheme.id);
  const aspect = camera.sensor.widthMm / camera.sensor.heightMm;
  const framePicture = useFramePicture(setupAsShot, schemeAsShot, frameAsShot, aspect, picture !== null);
  const isDrawn = framePicture.picture !== null;
  const start = useMemo(() => firstPlace(setup, scheme, frame, lamp?.id), [setup, scheme, frame, lamp?.id]);
  // most test frames are taken as they were rehearsed: the other cross goes along until it is put elsewhere
  const inPhoto = photoPlace ?? picturePlace ?? start;
  const inPicture = picturePlace ?? photoPlace ?? start;
  const isPointed = photoPlace !== null || picturePlace !== null;
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
  const places = { inPhoto, inPicture, setInPhoto, setInPicture };
  const setHeld = (passId: string, seconds: number) => setTyped((now) => ({ ...now, [passId]: seconds }));
  const asShot = { setupAsShot, schemeAsShot, frameAsShot, framePicture };
  return {
    photo,
    camera,
    aspect,
    scheme,
    frame,
    ...asShot,
    isTaken: exposed === setup,
    held,
    setHeld,
    lamps,
    lamp,
    look,
    ...places,
    isPointed,
    answer,
    setFrameId,
    setLampId,
    setLook,
  };
};
