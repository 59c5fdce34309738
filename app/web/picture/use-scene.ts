import { useEffect, useSyncExternalStore } from 'react';
import type { EngineState } from '../render/engine.ts';
import type { Scene } from '../render/scene.ts';
import { theDarkroom } from '../render/the-darkroom.ts';

/** How often the page is told how far the pictures are, milliseconds. */
const progressMilliseconds = 500;

/** Has the darkroom show a scene as long as the room is there; null while the room has nothing to show yet. */
export const useScene = (scene: Scene | null): void => {
  useEffect(() => {
    if (scene) theDarkroom().show(scene);
  }, [scene]);
  useEffect(() => () => theDarkroom().rest(), []);
};

const onLight = (listener: () => void) => theDarkroom().onLight(listener);

/** Who draws the pictures just now: the graphics card, nobody while it is lost, or the processor in its place. */
export const useLight = () => useSyncExternalStore(onLight, () => theDarkroom().light);

/** Tells twice a second how far the pictures are, without rendering anything by itself. */
export const useProgress = (tell: (state: EngineState) => void): void => {
  useEffect(() => {
    const timer = setInterval(() => tell(theDarkroom().state), progressMilliseconds);
    return () => clearInterval(timer);
  }, [tell]);
};

/** How far pictures are from done, in words; nothing when they are. */
export const progressWords = ({ isConverged, samples, progress }: EngineState): string => {
  if (isConverged) return '';
  return samples < 1 ? 'draft' : `refining · ${Math.floor(100 * progress)} %`;
};
