import type { PhoneRoom } from './state/session.ts';

/** What a room begins with, where something else than the picture stands over it. */
const starts: Readonly<Record<PhoneRoom, string>> = {
  plan: '.ground',
  lamps: '.slips:not(.subjects, .place)',
  subjects: '.subjects',
  exposure: '.frame-fields, .blend',
  time: '.hour-strip, .place, .time-line',
  notes: '.notes',
};

/**
 * Scrolls a phone's page to where a room that was chosen begins: back to the picture that it stands under or beside, or
 * past a sheet to the room's own first part.
 */
export const goToStart = (room: PhoneRoom): void => {
  const page = document.querySelector('.page');
  const picture = page?.querySelector('.viewfinder');
  const top = page?.querySelector('.top')?.getBoundingClientRect().bottom ?? 0;
  if (picture) {
    window.scrollTo(0, Math.min(window.scrollY, window.scrollY + top));
    return;
  }
  const start = [...(page?.querySelectorAll(starts[room]) ?? [])].find((each) => each.getClientRects().length > 0);
  start?.scrollIntoView({ block: 'start' });
};
