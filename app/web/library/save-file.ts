import { formatSetup } from '../../../core/setup/format-setup.ts';
import { useApp } from '../state/app-store.ts';

/** Hands the present setup to the browser as a download. */
export const saveFile = (): void => {
  const { history, tell, markSaved } = useApp.getState();
  const setup = history.present;
  const name = `${setup.id}.lampfall.json`;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([formatSetup(setup)], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  markSaved();
  tell({ tone: 'done', text: `Saved as ${name}` });
};
