import { useEffect, useRef } from 'react';

/** Longest side that a photo is drawn at. */
const longest = 1600;

/** The photo, drawn small enough for the screen. */
export const DrawnPhoto = ({ photo }: { photo: ImageBitmap }) => {
  const ref = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const canvas = ref.current;
    if (!canvas) return;
    const share = Math.min(1, longest / Math.max(photo.width, photo.height));
    canvas.width = Math.max(Math.round(photo.width * share), 1);
    canvas.height = Math.max(Math.round(photo.height * share), 1);
    canvas.getContext('2d')?.drawImage(photo, 0, 0, canvas.width, canvas.height);
  }, [photo]);
  return <canvas ref={ref} />;
};
