import { graphicsCard } from './render/capability.ts';
import { firstPicture } from './render/first-picture.ts';
import { useNightRun } from './state/night-run.ts';

/** Where no picture comes, nothing waits for it longer than this. */
const mostMilliseconds = 8000;

const noneWanted = (): Promise<void> =>
  new Promise((resolve) => {
    const look = () => useNightRun.getState().isOpen && resolve();
    useNightRun.subscribe(look);
    look();
  });

/** Waits until the first picture stands, which until then has the machine and the network to itself. */
export const pictureOrNone = async (): Promise<void> => {
  await Promise.race([firstPicture(graphicsCard().hasFloats ? mostMilliseconds : 0), noneWanted()]);
};
