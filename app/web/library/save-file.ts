import { formatSetup } from '../../../core/setup/format-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';

/** "Our hut, north side" -> "our-hut-north-side"; the setup's id where nothing is left of its name. */
const fileStem = ({ name, id }: Setup): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60) || id;

/** Hands the present setup to the browser as a download. */
export const saveFile = (): void => {
  const { history, tell, markSaved } = useApp.getState();
  const setup = history.present;
  const name = `${fileStem(setup)}.lampfall.json`;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([formatSetup(setup)], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  markSaved();
  tell({ tone: 'done', text: `Saved as ${name}` });
};
