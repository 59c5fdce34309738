import type { Frame } from '../../../core/setup/schema/setup.ts';
import { sceneOf, type WantedPicture } from '../picture/scene-of.ts';
import type { Size } from '../render/layer-store.ts';
import { theDarkroom } from '../render/the-darkroom.ts';
import type { PictureProgress } from '../state/sweeps.ts';

/** Pictures that are worked on together. Those that are done stay on their screens and cost nothing more. */
const atOnce = 4;
/** How often it is looked whether they are done, milliseconds. */
const lookMilliseconds = 40;

/** Pictures that are to be developed at one size. */
export interface SheetOrder {
  readonly pictures: readonly WantedPicture[];
  readonly frame: Frame | null;
  readonly size: Size;
  /** Samples that all of them get before any gets the next number of them. */
  readonly levels: readonly number[];
}

const pause = async () => {
  await new Promise((resolve) => setTimeout(resolve, lookMilliseconds));
  theDarkroom().drawNow();
};

/**
 * Develops a sheet a few pictures at a time, until done or called off.
 *
 * @param large the picture that is seen large just now, or null: it gets what its small one has
 */
export const developSheet = async (
  { pictures, frame, size, levels }: SheetOrder,
  large: () => WantedPicture | null,
  signal: AbortSignal,
  tell: (progress: PictureProgress) => void,
): Promise<void> => {
  const darkroom = theDarkroom();
  const develop = async (some: readonly WantedPicture[], samples: number, onLook: () => void) => {
    let shown: WantedPicture | null | undefined;
    do {
      const also = large();
      if (also !== shown) {
        shown = also;
        const scene = sceneOf(also ? [...some, also] : some, { frame, samples, showsEarly: true });
        darkroom.show({ ...scene, size });
      }
      await pause();
      if (signal.aborted) return;
      onLook();
    } while (!darkroom.state.isConverged);
  };
  const all = pictures.length;
  for (const [level, samples] of levels.entries())
    for (let from = 0; from < all; from += atOnce) {
      const some = pictures.slice(from, from + atOnce);
      const tellShare = (share: number) =>
        tell({
          stage: level > 0 ? 'refining' : 'first',
          shown: level > 0 ? all : from + (share < 1 ? 0 : some.length),
          share: (from + share * some.length) / all,
        });
      await develop(some, samples, () => tellShare(Math.min(darkroom.state.progress, 0.99)));
      if (signal.aborted) return;
      tellShare(1);
    }
  tell({ stage: 'done', shown: all, share: 1 });
};

/** Widest that the picture seen large is traced, and the most samples it gets. */
const [widest, mostSamples] = [960, 32];

/** Develops one picture large, by itself: at once as its small one is, then at its own size. */
export const developLarge = async (
  picture: WantedPicture,
  { frame, size }: Pick<SheetOrder, 'frame' | 'size'>,
  samples: number,
  signal: AbortSignal,
): Promise<void> => {
  const darkroom = theDarkroom();
  darkroom.show({ ...sceneOf([picture], { frame, samples: 1, showsEarly: true }), size });
  do {
    await pause();
    if (signal.aborted) return;
  } while (!darkroom.state.isConverged);
  darkroom.show(sceneOf([picture], { frame, samples: Math.min(samples, mostSamples), widest }));
};
