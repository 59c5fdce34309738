import { graphicsCard } from './render/capability.ts';
import { firstPicture } from './render/first-picture.ts';
import { useNightRun } from './state/night-run.ts';

/** Where no picture comes, nothing waits for it longer than this. */
const mostMilliseconds = 8000;

/** Settles when the night run is opened, which shows no picture; `end` listens no longer. */
const noneWanted = () => {
  let end = () => {};
  const opened = new Promise<void>((resolve) => {
    const look = () => useNightRun.getState().isOpen && resolve();
    end = useNightRun.subscribe(look);
    look();
  });
  return { opened, end };
};

/** Waits until the first picture stands, which until then has the machine and the network to itself. */
export const pictureOrNone = async (): Promise<void> => {
  const none = noneWanted();
  await Promise.race([firstPicture(graphicsCard().hasFloats ? mostMilliseconds : 0), none.opened]).finally(none.end);
};
