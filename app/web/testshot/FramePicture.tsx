import { useEffect, useRef } from 'react';
import type { FramePicture as Seen } from './use-frame-picture.ts';

/** The frame as rehearsed, with the exposure of the photo. */
export const FramePicture = ({ seen: { picture, isDrawing } }: { seen: Seen }) => {
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
      <canvas ref={ref} data-drawn={drawn !== null && !isDrawing} />
      {isDrawing && <span className="shot-drawing">Drawing it…</span>}
      {picture === 'failed' && !isDrawing && (
        <span className="shot-drawing">It can’t be drawn here. It is measured all the same.</span>
      )}
    </>
  );
};
