import '../../../app/web/own-scripts.ts';
import { openFile } from '../../../app/web/library/open-file.ts';
import { openLink } from '../../../app/web/share/open-link.ts';
import { useApp } from '../../../app/web/state/app-store.ts';

/** What the page would say, and whether the setup on screen is still the one before. */
export interface Opened {
  readonly tone: string;
  readonly text: string;
  readonly isSame: boolean;
  /** What is left of the link in the page’s address. */
  readonly hash: string;
}

declare global {
  interface Window {
    hit?: number;
    openOne: (way: 'link' | 'file', text: string) => Promise<Opened>;
  }
}

window.openOne = async (way, text) => {
  const before = useApp.getState().history.present;
  useApp.getState().tell(null);
  if (way === 'link') {
    history.replaceState(null, '', `#${text}`);
    openLink();
  } else await openFile(new File([text], 'given.json'));
  const { notice, history: steps } = useApp.getState();
  return {
    tone: notice?.tone ?? 'silent',
    text: notice?.text ?? '',
    isSame: steps.present === before,
    hash: location.hash,
  };
};
