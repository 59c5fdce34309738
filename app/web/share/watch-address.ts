import { linkField } from '../../../core/share/link-text.ts';
import { useApp } from '../state/app-store.ts';

export const loadOpenLink = () => import('./open-link.ts');

const look = async (): Promise<void> => {
  // all else after “#” is none of ours
  if (!location.hash.startsWith(`#${linkField}`)) return;
  try {
    (await loadOpenLink()).openLink();
  } catch {
    const text =
      'The link could not be opened: a part of the page is missing. Load the page again with the network on.';
    useApp.getState().tell({ tone: 'problem', text });
  }
};

/** Opens the setup in the page’s address, now and whenever another one is put there. */
export const watchAddress = (): void => {
  window.addEventListener('hashchange', () => void look());
  void look();
};
