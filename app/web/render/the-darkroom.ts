import { Darkroom } from './darkroom.ts';
import type { Drawers } from './engines.ts';
import { plainSkyDrawer } from './sky-drawer.ts';

let only: Darkroom | null = null;
let drawers: Drawers = {
  sky: plainSkyDrawer,
  slow: { draw: (_order, _onStep, onFail) => onFail(), stop: () => undefined, end: () => undefined },
};

/** Who draws off the page’s thread: skies, and pictures where the graphics card can’t. Told before the darkroom is set up. */
export const drawWith = (others: Partial<Drawers>): void => {
  drawers = { ...drawers, ...others };
};

/** The page's darkroom, set up when first asked for. */
export const theDarkroom = (): Darkroom => {
  only ??= new Darkroom(drawers);
  return only;
};

/** Forgets what the page's darkroom has traced, if there is one. */
export const startDarkroomOver = (): void => only?.startOver();
