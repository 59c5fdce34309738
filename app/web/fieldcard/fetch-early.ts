import { loadCardFont, loadPdf } from './late-files.ts';

/** The room comes when it is opened, or when the page is at rest. */
export const loadFieldCard = () =>
  import('./FieldCardRoom.tsx').then(({ FieldCardRoom }) => ({ default: FieldCardRoom }));

/** Has all of the card come while there is a network: it is wanted where there is none. */
export const fetchCardFiles = async (): Promise<void> => {
  await Promise.allSettled([loadFieldCard(), loadPdf(), loadCardFont()]);
};
