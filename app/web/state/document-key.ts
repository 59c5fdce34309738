import type { useApp } from './app-store.ts';

/** Differs between the document and any taken up after it, whatever they are called: every place of one's own has the same id, and so may its schemes. */
export const documentKeyOf = ({ openings, history }: ReturnType<typeof useApp.getState>): string =>
  `${openings} ${history.present.id}`;
