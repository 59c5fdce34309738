import { useCallback, useRef } from 'react';
import type { EngineState } from '../render/engine.ts';
import { progressWords, useProgress } from './use-scene.ts';

/** A mark in the corner that says how far the pictures are. */
export const Progress = () => {
  const span = useRef<HTMLSpanElement>(null);
  // straight into the element: a word that changes twice a second is no reason to render
  const tell = useCallback((state: EngineState) => {
    const words = progressWords(state);
    if (span.current && span.current.textContent !== words) span.current.textContent = words;
  }, []);
  useProgress(tell);
  return <span ref={span} className="picture-progress" />;
};
