import { smallPicture } from '../picture/small-picture.ts';
import { canDrawPicture } from '../render/capability.ts';
import { theDarkroom } from '../render/darkroom.ts';
import { useApp } from '../state/app-store.ts';
import { pageConnection, useSaving } from '../state/page-saving.ts';
import { useSession } from '../state/session.ts';
import { changeSummary } from '../storage/change-summary.ts';

/** How often it is looked whether there is a picture to take, and how long one that gets finer is waited for, milliseconds. */
const lookMilliseconds = 2000;
const patienceMilliseconds = 20_000;

/** Keeps a small picture with the setup on screen, once that is at rest. What goes wrong with it is of no consequence. */
export const startThumbnails = (): void => {
  if (!canDrawPicture()) return;
  let taken: object | null = null;
  let seen: object | null = null;
  let since = 0;
  setInterval(() => {
    const { key, changes } = useSaving.getState();
    const { present, gestureStart } = useApp.getState().history;
    const { room, marks, hidesAnswer } = useSession.getState();
    if (seen !== present) [seen, since] = [present, Date.now()];
    if (key === null || taken === present || gestureStart || document.hidden) return;
    if (room !== 'viewfinder' || marks.levels || marks.full || hidesAnswer) return;
    const { isConverged, samples } = theDarkroom().state;
    if (!isConverged && (samples < 1 || Date.now() - since < patienceMilliseconds)) return;
    const thumbnail = smallPicture('viewfinder');
    taken = present;
    if (thumbnail === null) return;
    void pageConnection
      .use((database) => changeSummary(database, key, { thumbnail }))
      .then((isThere) => {
        // not written yet: taken once it is
        if (!isThere) taken = null;
        else if (changes === useSaving.getState().changes) useSaving.getState().changed();
      })
      .catch(() => undefined);
  }, lookMilliseconds);
};
