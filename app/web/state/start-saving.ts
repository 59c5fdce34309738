import { clearDeleted } from '../storage/change-summary.ts';
import { openLast } from './open-last.ts';
import { pageSaving } from './page-saving.ts';
import { hurryWrites } from './setup-writer.ts';

/** How long deleted setups are kept for whoever has the notice with “Undo” still open in another tab, in milliseconds. */
const deletedMilliseconds = 60_000;
/** When the store is tidied, in milliseconds after the start. */
const tidyMilliseconds = 6000;

/** Opens what was open last, then keeps what is changed. To be awaited before the page is drawn. */
export const startSaving = async (): Promise<void> => {
  await openLast(pageSaving);
  pageSaving.start();
  const flush = () => {
    hurryWrites();
    void pageSaving.autosave.flush();
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') flush();
  });
  window.addEventListener('pagehide', flush);
  window.addEventListener('beforeunload', flush);
  const tidy = () =>
    pageSaving.connection
      .use((database) => clearDeleted(database, { before: Date.now() - deletedMilliseconds }))
      .catch(() => undefined);
  setTimeout(() => void tidy(), tidyMilliseconds);
};
