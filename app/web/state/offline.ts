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

const entry = (): string | undefined => document.querySelector<HTMLScriptElement>('script[type=module][src]')?.src;

/** Whether what this page is made of is kept. The browser may have thrown it away and left the worker. */
const areFilesThere = async (scope: string): Promise<boolean> => {
  const found = await Promise.all([scope, entry() ?? scope].map((url) => caches.match(url)));
  return found.every(Boolean);
};

const follow = async (registration: ServiceWorkerRegistration): Promise<void> => {
  const look = async (): Promise<boolean> => {
    const areThere = await areFilesThere(registration.scope);
    const { active, waiting } = registration;
    useOffline.setState({ isReady: active !== null && areThere, newer: active ? waiting : null });
    return areThere;
  };
  const watch = (worker: ServiceWorker | null) => worker?.addEventListener('statechange', () => void look());
  watch(registration.installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
  navigator.serviceWorker.addEventListener('message', () => void look());
  if (!(await look())) registration.active?.postMessage('keep-again');
};

/** As long as a page is open, no newer version throws away the files that it may still need: done as soon as it runs. */
export const holdFiles = (): void => {
  const url = entry();
  if (url && navigator.locks) void navigator.locks.request(url, { mode: 'shared' }, () => new Promise(() => undefined));
};

/** Has the browser keep the page’s files. Where it can’t, the page works as ever, with a network. */
export const keepFiles = async (): Promise<void> => {
  if (!navigator.serviceWorker) return;
  try {
    await follow(await navigator.serviceWorker.register('./offline.js', { updateViaCache: 'none' }));
  } catch {
    // nothing is lost: private windows and some settings have no service workers
  }
};
