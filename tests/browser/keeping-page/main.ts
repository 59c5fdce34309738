import '../../../app/web/own-scripts.ts';
import { useApp } from '../../../app/web/state/app-store.ts';
import { renameSetup } from '../../../app/web/state/edits/setup-edits.ts';
import { openAsOwn } from '../../../app/web/state/open-as-own.ts';
import { useSaving } from '../../../app/web/state/page-saving.ts';
import { samples } from '../../../app/web/state/samples.ts';
import { startSaving } from '../../../app/web/state/start-saving.ts';

/** What a test sees and does here: the page's store and the page's keeping of it, without its rooms. */
export interface Keeping {
  readonly name: () => string;
  readonly news: () => number;
  /** Renames the setup; every ten edits are one drag. */
  readonly edit: (edit: number) => void;
  /** Takes up a large setup as the user's own. */
  readonly openLarge: () => Promise<void>;
}

declare global {
  interface Window {
    keeping?: Keeping;
  }
}

const app = () => useApp.getState();
await startSaving();
window.keeping = {
  name: () => app().history.present.name,
  news: () => useSaving.getState().news.length,
  edit: (edit) => {
    if (edit % 10 === 0) app().begin();
    app().edit((setup) => renameSetup(setup, `edit ${edit}`));
    if (edit % 10 === 9) app().commit();
  },
  openLarge: async () => {
    const setup = await samples.find(({ id }) => id === 'turf-hut')?.load();
    if (setup) openAsOwn(setup);
  },
};
