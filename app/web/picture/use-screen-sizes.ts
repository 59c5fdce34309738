import { useCallback, useState } from 'react';
import type { Size } from '../render/layer-store.ts';

export type ScreenSizes = ReadonlyMap<string, Size>;
export type OnScreenSize = (name: string, size: Size | null) => void;

/** Sizes of a room's screens by name, as far as they are known, and what to tell them to. */
export const useScreenSizes = (): readonly [ScreenSizes, OnScreenSize] => {
  const [sizes, setSizes] = useState<ScreenSizes>(new Map());
  const onSize = useCallback((name: string, size: Size | null) => {
    setSizes((known) => {
      const before = known.get(name);
      if (before?.width === size?.width && before?.height === size?.height) return known;
      const next = new Map(known);
      if (size) next.set(name, size);
      else next.delete(name);
      return next;
    });
  }, []);
  return [sizes, onSize];
};
