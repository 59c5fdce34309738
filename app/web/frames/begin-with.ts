import { useNightRun } from '../state/night-run.ts';
import { useSession } from '../state/session.ts';

/** Where a new subject, or a new lamp, is chosen. */
const places = { subject: '.add-subject', lamp: '.add-lamp' } as const;

/** Shows where a place of one's own begins: the list of subjects to add, or of lamps, wherever on the page one is. */
export const beginWith = (what: keyof typeof places): void => {
  useNightRun.setState({ isOpen: false });
  useSession.getState().set({ room: 'viewfinder', phoneRoom: what === 'subject' ? 'subjects' : 'lamps' });
  // once it is drawn
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const place = document.querySelector(places[what]);
      if (place instanceof HTMLDetailsElement) place.open = true;
      place?.querySelector<HTMLElement>('summary, button')?.focus();
      place?.scrollIntoView({ block: 'nearest' });
    }),
  );
};
