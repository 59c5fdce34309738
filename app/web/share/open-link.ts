import { SetupError } from '../../../core/setup/setup-error.ts';
import { decodeLink } from '../../../core/share/decode-link.ts';
import { useApp } from '../state/app-store.ts';
import { openAsOwn } from '../state/open-as-own.ts';

/**
 * Opens the setup in the page’s address, and takes it out of there. When it can’t be used, says why and leaves what was open
 * untouched.
 */
export const openLink = (): void => {
  const { tell } = useApp.getState();
  const fragment = location.hash.slice(1);
  history.replaceState(history.state, '', location.pathname + location.search);
  try {
    const setup = decodeLink(fragment);
    openAsOwn(setup);
    tell({ tone: 'done', text: `Opened “${setup.name}” from a link. It is a setup of your own now.` });
  } catch (error) {
    const why = error instanceof SetupError ? error.message : 'It could not be read';
    tell({ tone: 'problem', text: `The link was not opened. ${why}. Your present setup is unchanged.` });
  }
};
