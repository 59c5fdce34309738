import { useEffect, useRef } from 'react';
import { pixelRatio } from '../render/darkroom.ts';
import { theDarkroom } from '../render/the-darkroom.ts';
import type { OnScreenSize } from './use-screen-sizes.ts';

interface ScreenProps {
  /** What the scene calls it. */
  readonly name: string;
  /** What is seen, in words. */
  readonly label: string;
  /** Told its size in device pixels whenever that changes. */
  readonly onSize: OnScreenSize;
}

/** A canvas that the darkroom copies a finished picture to; it fills the box that it stands in. */
export const Screen = ({ name, label, onSize }: ScreenProps) => {
  const ref = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const canvas = ref.current;
    if (!canvas) return;
    const takeDown = theDarkroom().addScreen(name, canvas);
    const observer = new ResizeObserver(() => {
      const ratio = pixelRatio();
      const [width, height] = [canvas.clientWidth, canvas.clientHeight].map((v) => Math.floor(v * ratio));
      if (width && height) onSize(name, { width, height });
    });
    observer.observe(canvas);
    return () => {
      observer.disconnect();
      takeDown();
      onSize(name, null);
    };
  }, [name, onSize]);
  return <canvas ref={ref} className="screen" role="img" aria-label={label} />;
};
