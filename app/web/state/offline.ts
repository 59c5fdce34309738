import { create } from 'zustand';

interface Offline {
  /** Whether all files of the page are kept, so that it opens without a network. */
  readonly isReady: boolean;
  /** A newer version that is kept whole and waits; null = none. */
  readonly newer: ServiceWorker | null;
}

export const useOffline = create<Offline>(() => ({ isReady: false, newer: null }));

/** Done before a newer version is taken up, such as saving what was changed last. */
const before: (() => Promise<void>)[] = [];
export const beforeTakingUp = (work: () => Promise<void>): void => {
  before.push(work);
};

/** Goes over to the newer version. The page is loaded anew; where something is not saved, the browser asks first. */
export const takeUpNewer = async (): Promise<void> => {
  const { newer } = useOffline.getState();
  for (const work of before) await work();
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  newer?.postMessage('take-up');
};

const follow = (registration: ServiceWorkerRegistration): void => {
  const look = () => {
    const { active, waiting } = registration;
    useOffline.setState({ isReady: active !== null, newer: active ? waiting : null });
  };
  const watch = (worker: ServiceWorker | null) => worker?.addEventListener('statechange', look);
  watch(registration.installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
  look();
};

/** As long as a page is open, no newer version throws away the files that it may still need. */
const holdFiles = (): void => {
  const entry = document.querySelector<HTMLScriptElement>('script[type=module][src]');
  if (entry && navigator.locks)
    void navigator.locks.request(entry.src, { mode: 'shared' }, () => new Promise(() => undefined));
};

/** Has the browser keep the page’s files. Where it can’t, the page works as ever, with a network. */
export const keepFiles = async (): Promise<void> => {
  if (!navigator.serviceWorker) return;
  try {
    holdFiles();
    follow(await navigator.serviceWorker.register('./offline.js', { updateViaCache: 'none' }));
  } catch {
    // nothing is lost: private windows and some settings have no service workers
  }
};
