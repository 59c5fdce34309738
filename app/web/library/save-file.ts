import { formatSetup } from '../../../core/setup/format-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';

/** "Our hut, north side" -> "our-hut-north-side"; the setup's id where nothing is left of its name. */
const fileStem = ({ name, id }: Pick<Setup, 'name' | 'id'>): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60) || id;

/** Hands a text to the browser as a download, called after a setup; the file's name. */
const download = (setup: Pick<Setup, 'name' | 'id'>, text: string): string => {
  const name = `${fileStem(setup)}.lampfall.json`;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  return name;
};

/** Hands the present setup to the browser as a download. */
export const saveFile = (): void => {
  const { history, tell, markSaved } = useApp.getState();
  const name = download(history.present, formatSetup(history.present));
  markSaved();
  tell({ tone: 'done', text: `Saved as ${name}` });
};

/** The same for what is kept of a setup that can't be used. */
export const saveBroken = (name: string, text: string): void => {
  const file = download({ name, id: 'setup' }, text);
  useApp.getState().tell({ tone: 'done', text: `Saved as ${file}` });
};
