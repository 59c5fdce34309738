import { smallPicture } from '../picture/small-picture.ts';
import { theDarkroom } from '../render/the-darkroom.ts';
import { useApp } from '../state/app-store.ts';
import { pageConnection, useSaving } from '../state/page-saving.ts';
import { useSession } from '../state/session.ts';
import { changeSummary } from '../storage/change-summary.ts';

/** How often it is looked whether there is a picture to take, and how long a setup must be at rest for it, in milliseconds. */
const lookMilliseconds = 1500;
const restMilliseconds = 3000;

/** The setup that a picture was last taken of, and how fine that was. */
interface Taken {
  readonly of: object;
  readonly key: string;
  readonly isFine: boolean;
}

/** Keeps a small picture with the setup on screen, once that is at rest. What goes wrong with it is of no consequence. */
export const startThumbnails = (): void => {
  let taken: Taken | null = null;
  let seen: object | null = null;
  let since = 0;
  const keep = async (key: string, thumbnail: string, what: Taken) => {
    // before the first write there is nothing to keep it with
    if (await pageConnection.use((database) => changeSummary(database, key, { thumbnail }))) {
      taken = what;
      useSaving.getState().changed();
    }
  };
  setInterval(() => {
    const { key } = useSaving.getState();
    const { present, gestureStart } = useApp.getState().history;
    const { room, marks, hidesAnswer } = useSession.getState();
    if (seen !== present) [seen, since] = [present, Date.now()];
    if (key === null || gestureStart || document.hidden || Date.now() - since < restMilliseconds) return;
    if (room !== 'viewfinder' || marks.levels || marks.full || hidesAnswer) return;
    const { isConverged, samples } = theDarkroom().state;
    const isNew = taken?.of !== present || taken.key !== key;
    // a first one early, the fine one when it is done
    if (samples < 1 || !(isNew || (isConverged && !taken?.isFine))) return;
    const thumbnail = smallPicture('viewfinder');
    if (thumbnail) void keep(key, thumbnail, { of: present, key, isFine: isConverged }).catch(() => undefined);
  }, lookMilliseconds);
};
