import { useEffect, useState } from 'react';
import type { Camera, Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { maxSamples } from '../picture/samples.ts';
import { sceneOf } from '../picture/scene-of.ts';
import { theDarkroom } from '../render/the-darkroom.ts';
import { cameraOf } from '../state/edits/place-edits.ts';

/** Width that the frame is drawn at, and samples a pixel: to find one’s way by. */
const [width, samples] = [720, 4];

/** Pictures that were developed already, by the document’s own objects, which never change. */
const developed = new WeakMap<Frame, Pick<Made, 'setup' | 'camera'> & { readonly picture: HTMLCanvasElement }>();

const pictureKept = (setup: Setup, frame: Frame, camera: Camera): HTMLCanvasElement | null => {
  const kept = developed.get(frame);
  return kept?.setup === setup && kept.camera === camera ? kept.picture : null;
};

/** What is seen of the frame. */
export interface FramePicture {
  /** While another is drawn, the one of before where it has the same framing; null until there is one. */
  readonly picture: HTMLCanvasElement | 'failed' | null;
  readonly isDrawing: boolean;
}

/** A picture with what it is of. */
interface Made {
  readonly setup: Setup;
  readonly frame: Frame;
  readonly camera: Camera;
  readonly picture: HTMLCanvasElement | 'failed';
}

/** The picture of one frame, developed apart from the page as soon as it is wanted. */
export const useFramePicture = (
  setup: Setup,
  scheme: Scheme,
  frame: Frame,
  aspect: number,
  isWanted: boolean,
): FramePicture => {
  const [made, setMade] = useState<Made | null>(null);
  const camera = cameraOf(setup, scheme.id);
  useEffect(() => {
    if (!isWanted) return;
    const kept = pictureKept(setup, frame, camera);
    if (kept) {
      setMade({ setup, frame, camera, picture: kept });
      return;
    }
    const order = new AbortController();
    const wanted = {
      setup,
      scheme,
      isUnlit: false,
      screen: 'shot',
      look: 'picture',
      against: null,
      marksFull: false,
    } as const;
    const wide = Math.round(width * Math.min(window.devicePixelRatio || 1, 1));
    const size = { width: wide, height: Math.max(Math.round(wide / aspect), 1) };
    const scene = sceneOf([{ ...wanted, size, frame }], {
      frame,
      samples: Math.min(samples, maxSamples),
      showsEarly: true,
      widest: wide,
    });
    void theDarkroom()
      .print({ scene, onProgress: () => undefined, signal: order.signal })
      .catch(() => null)
      .then((printed) => {
        if (order.signal.aborted) return;
        const drawn = printed?.get('shot');
        if (drawn) developed.set(frame, { setup, camera, picture: drawn });
        setMade({ setup, frame, camera, picture: drawn ?? 'failed' });
      });
    return () => order.abort();
  }, [setup, scheme, frame, camera, aspect, isWanted]);
  const isSameView = made?.frame.id === frame.id && made.camera === camera;
  const isOfThis = isSameView && made.setup === setup && made.frame === frame;
  // with another count or exposure a spot stays where it is
  return { picture: isSameView ? made.picture : null, isDrawing: !isOfThis };
};
