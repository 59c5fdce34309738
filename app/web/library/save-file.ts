import { formatSetup } from '../../../core/setup/format-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { download } from '../ui/download.ts';
import { fileStem } from '../ui/file-stem.ts';

/** Hands a text to the browser as a download, called after a setup. */
const save = (setup: Pick<Setup, 'name' | 'id'>, text: string): void => {
  const name = `${fileStem(setup)}.lampfall.json`;
  download(new Blob([text], { type: 'application/json' }), name);
  useApp.getState().tell({ tone: 'done', text: `Saved as ${name}` });
};

/** Hands the present setup to the browser as a download. */
export const saveFile = (): void => {
  const { history, markSaved } = useApp.getState();
  save(history.present, formatSetup(history.present));
  markSaved();
};

/** The same for what is kept of a setup that can't be used. */
export const saveBroken = (name: string, text: string): void => save({ name, id: 'setup' }, text);
