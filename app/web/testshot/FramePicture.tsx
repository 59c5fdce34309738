import { useEffect, useRef } from 'react';
import type { FramePicture as Picture } from './use-frame-picture.ts';

/** The frame as rehearsed, with the exposure of the photo. */
export const FramePicture = ({ picture }: { picture: Picture }) => {
  const ref = useRef<HTMLCanvasElement>(null);
  const drawn = picture === 'failed' ? null : picture;
  useEffect(() => {
    const canvas = ref.current;
    if (!canvas || !drawn) return;
    canvas.width = drawn.width;
    canvas.height = drawn.height;
    canvas.getContext('2d')?.drawImage(drawn, 0, 0);
  }, [drawn]);
  return (
    <>
      <canvas ref={ref} data-drawn={drawn !== null} />
      {!drawn && (
        <span className="shot-drawing">
          {picture ? 'It can’t be drawn here. It is measured all the same.' : 'Drawing it…'}
        </span>
      )}
    </>
  );
};
