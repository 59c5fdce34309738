import { create } from 'zustand';

/** Of a screen, in device pixels. */
interface ScreenSize {
  readonly width: number;
  readonly height: number;
}

/** Small screens beside the picture that show a single frame each, or the blend: by frame id, `blendScreen` for the blend. */
interface FrameScreens {
  readonly sizes: ReadonlyMap<string, ScreenSize>;
  readonly onSize: (name: string, size: ScreenSize | null) => void;
}

/** Stands for the blend among them; no frame can be called so. */
export const blendScreen = ':blend';

/** What such a screen is called on the page. */
export const frameScreenName = (frameId: string): string => `frame/${frameId}`;

export const useFrameScreens = create<FrameScreens>((set) => ({
  sizes: new Map(),
  onSize: (name, size) =>
    set(({ sizes }) => {
      const id = name.slice(frameScreenName('').length);
      const before = sizes.get(id);
      if (before?.width === size?.width && before?.height === size?.height) return {};
      const next = new Map(sizes);
      if (size) next.set(id, size);
      else next.delete(id);
      return { sizes: next };
    }),
}));
