import '../../../app/web/own-scripts.ts';
import { holdFiles, keepFiles, takeUpNewer, useOffline } from '../../../app/web/state/offline.ts';

declare const buildName: string;

declare global {
  interface Window {
    offlinePage: {
      readonly build: string;
      /** Comes when it is known whether the files are kept. */
      readonly followed: Promise<void>;
      late: () => Promise<string>;
      takeUpNewer: () => Promise<void>;
      state: () => { isReady: boolean; hasNewer: boolean };
    };
  }
}

holdFiles();
window.offlinePage = {
  build: buildName,
  followed: keepFiles(),
  late: async () => (await import('./late.ts')).lateWord,
  takeUpNewer,
  state: () => {
    const { isReady, newer } = useOffline.getState();
    return { isReady, hasNewer: newer !== null };
  },
};
