import { useEffect, useSyncExternalStore } from 'react';
import { theDarkroom } from '../render/darkroom.ts';
import type { EngineState } from '../render/picture-engine.ts';
import type { Scene } from '../render/scene.ts';

/** How often the page is told how far the pictures are, milliseconds. */
const progressMilliseconds = 500;

/** Has the darkroom show a scene as long as the room is there; null while the room has nothing to show yet. */
export const useScene = (scene: Scene | null): void => {
  useEffect(() => {
    if (scene) theDarkroom().show(scene);
  }, [scene]);
  useEffect(() => () => theDarkroom().rest(), []);
};

const onLost = (listener: () => void) => theDarkroom().onLost(listener);
const isCardLost = () => theDarkroom().isLost;
const never = () => () => undefined;
const no = () => false;

/** Whether the graphics card is lost just now; it may have been before the room was there. */
export const useCardLost = (isAble: boolean): boolean =>
  useSyncExternalStore(isAble ? onLost : never, isAble ? isCardLost : no);

/** Tells twice a second how far the pictures are, without rendering anything by itself. */
export const useProgress = (isAble: boolean, tell: (state: EngineState) => void): void => {
  useEffect(() => {
    if (!isAble) return;
    const timer = setInterval(() => tell(theDarkroom().state), progressMilliseconds);
    return () => clearInterval(timer);
  }, [isAble, tell]);
};

/** How far pictures are from done, in words; nothing when they are. */
export const progressWords = ({ isConverged, samples, progress }: EngineState): string => {
  if (isConverged) return '';
  return samples < 1 ? 'draft' : `refining · ${Math.floor(100 * progress)} %`;
};
