import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { PictureEngine } from '../render/picture-engine.ts';
import type { Scene } from '../render/scene.ts';
import { sceneOf } from './scene-of.ts';
import { usePictureView } from './use-picture-view.ts';

declare global {
  interface Window {
    /** For tests and benches: what the renderer has done so far. */
    lampfallProbe?: () => PictureEngine['state'];
  }
}

/** Samples a pixel gets before the picture counts as done; `?samples=` in the address sets another number for tests. */
const maxSamples = Math.min(
  Math.max(Math.round(Number(new URLSearchParams(location.search).get('samples') ?? 64)) || 64, 1),
  4096,
);

/** How often the page is told how far the picture is. */
const progressMilliseconds = 500;

/** How far the picture is from done; nothing when it is. */
const progressWords = ({ isConverged, samples, progress }: PictureEngine['state']): string => {
  if (isConverged) return '';
  return samples < 1 ? 'draft' : `refining · ${Math.floor(100 * progress)} %`;
};

/** The traced picture, drawn into the canvas it stands in. Works only while there is something left to do. */
export const Picture = ({ onProgress }: { onProgress: (words: string) => void }) => {
  const gl = useThree((state) => state.gl);
  const size = useThree((state) => state.size);
  const dpr = useThree((state) => state.viewport.dpr);
  const invalidate = useThree((state) => state.invalidate);
  const { setup, schemes, frameId, marksFull } = usePictureView();
  const engine = useMemo(() => new PictureEngine(gl, invalidate, maxSamples), [gl, invalidate]);
  const [width, height] = [Math.floor(size.width * dpr), Math.floor(size.height * dpr)];
  const scene: Scene = useMemo(
    () => sceneOf({ setup, schemes, frameId, marksFull, width, height }),
    [setup, schemes, frameId, marksFull, width, height],
  );

  useEffect(() => engine.show(scene), [engine, scene]);

  useEffect(() => {
    window.lampfallProbe = () => engine.state;
    const canvas = gl.domElement;
    const onLost = (event: Event) => event.preventDefault();
    const onRestored = () => engine.restart();
    canvas.addEventListener('webglcontextlost', onLost);
    canvas.addEventListener('webglcontextrestored', onRestored);
    return () => {
      canvas.removeEventListener('webglcontextlost', onLost);
      canvas.removeEventListener('webglcontextrestored', onRestored);
      engine.dispose();
    };
  }, [engine, gl]);

  useEffect(() => {
    const timer = setInterval(() => onProgress(progressWords(engine.state)), progressMilliseconds);
    return () => clearInterval(timer);
  }, [engine, onProgress]);

  // priority 1: this draws instead of the fiber's own scene render
  useFrame(() => engine.draw(), 1);
  return null;
};
