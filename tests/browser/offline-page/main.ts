import '../../../app/web/own-scripts.ts';
import { keepFiles, takeUpNewer, useOffline } from '../../../app/web/state/offline.ts';

declare const buildName: string;

declare global {
  interface Window {
    offlinePage: {
      readonly build: string;
      late: () => Promise<string>;
      takeUpNewer: () => Promise<void>;
      state: () => { isReady: boolean; hasNewer: boolean };
    };
  }
}

window.offlinePage = {
  build: buildName,
  late: async () => (await import('./late.ts')).lateWord,
  takeUpNewer,
  state: () => {
    const { isReady, newer } = useOffline.getState();
    return { isReady, hasNewer: newer !== null };
  },
};
void keepFiles();
