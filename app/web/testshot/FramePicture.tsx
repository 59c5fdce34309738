import { useEffect, useRef } from 'react';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useFramePicture } from './use-frame-picture.ts';

interface FramePictureProps {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly frame: Frame;
  readonly aspect: number;
}

/** The frame as rehearsed, with the exposure of the photo. */
export const FramePicture = ({ setup, scheme, frame, aspect }: FramePictureProps) => {
  const ref = useRef<HTMLCanvasElement>(null);
  const picture = useFramePicture(setup, scheme, frame, aspect);
  useEffect(() => {
    const canvas = ref.current;
    if (!canvas || !picture) return;
    canvas.width = picture.width;
    canvas.height = picture.height;
    canvas.getContext('2d')?.drawImage(picture, 0, 0);
  }, [picture]);
  return (
    <>
      <canvas ref={ref} data-drawn={picture !== null} />
      {!picture && <span className="shot-drawing">Drawing it…</span>}
    </>
  );
};
