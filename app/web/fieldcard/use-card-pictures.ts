import { useEffect, useState } from 'react';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { type ColourPixels, greyPictures } from '../../card/grey-pictures.ts';
import type { PicturePngs } from '../../card/pdf-of-pages.ts';
import { maxSamples } from '../picture/samples.ts';
import { sceneOf, type WantedPicture } from '../picture/scene-of.ts';
import { theDarkroom } from '../render/the-darkroom.ts';

/** Of a picture on the card: 200 pixels to the inch at 55 mm. */
const widthPixels = 430;
/** Samples that a small print needs; fewer where the page traces fewer. */
const mostSamples = 16;
/** How long the setup must have been left alone, milliseconds. */
const restMilliseconds = 700;

const pixelsOf = (canvas: HTMLCanvasElement | undefined): ColourPixels | null => {
  // a canvas that is read goes through one that is not the darkroom's
  const copy = canvas && new OffscreenCanvas(canvas.width, canvas.height);
  const context = copy?.getContext('2d', { willReadFrequently: true });
  if (!canvas || !context) return null;
  context.drawImage(canvas, 0, 0);
  return context.getImageData(0, 0, canvas.width, canvas.height);
};

const develop = async (setup: Setup, scheme: Scheme, signal: AbortSignal): Promise<PicturePngs | null> => {
  const { sensor } = scheme.camera ?? setup.camera;
  const size = {
    width: widthPixels,
    height: Math.max(Math.round((widthPixels * sensor.heightMm) / sensor.widthMm), 1),
  };
  const wanted = (screen: string, isUnlit: boolean): WantedPicture => ({
    setup,
    scheme,
    isUnlit,
    screen,
    look: 'picture',
    against: null,
    marksFull: false,
    size,
  });
  const scene = sceneOf([wanted('card/lit', false), wanted('card/unlit', true)], {
    frame: null,
    samples: Math.min(maxSamples, mostSamples),
    widest: widthPixels,
  });
  const canvases = await theDarkroom().print({ scene, signal, onProgress: () => undefined });
  const [lit, unlit] = ['card/lit', 'card/unlit'].map((name) => pixelsOf(canvases?.get(name)));
  return lit && unlit ? greyPictures(lit, unlit) : null;
};

interface Made {
  readonly setup: Setup;
  readonly scheme: Scheme;
  /** null where they could not be drawn. */
  readonly pngs: PicturePngs | null;
}

/** The card's two pictures, as far as they are there. */
export interface CardPictures {
  /** Of the scheme on screen, those before the last change while the next are on their way; null = none. */
  readonly pngs: PicturePngs | null;
  /** They are being developed, or will be. */
  readonly isComing: boolean;
}

/** The card's two pictures in greys, anew when the setup has been left alone for a moment. */
export const useCardPictures = (setup: Setup, scheme: Scheme): CardPictures => {
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    const tell = (pngs: PicturePngs | null) => {
      if (!controller.signal.aborted) setMade({ setup, scheme, pngs });
    };
    const timer = setTimeout(() => {
      develop(setup, scheme, controller.signal).then(tell, () => tell(null));
    }, restMilliseconds);
    return () => {
      clearTimeout(timer);
      controller.abort();
    };
  }, [setup, scheme]);
  return {
    // those of another scheme are worse than none
    pngs: made?.scheme.id === scheme.id ? made.pngs : null,
    isComing: made?.setup !== setup || made.scheme !== scheme,
  };
};
