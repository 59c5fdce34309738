/**
 * The service worker: keeps all files of one build and answers from them. It is put beside the page by offline-plugin.ts,
 * which writes the two constants below before it. A build is kept whole or not at all; what an older page that is still open
 * needs stays until it is closed.
 */
declare const build: string;
declare const files: readonly (readonly [address: string, hash: string])[];

const worker = self as unknown as ServiceWorkerGlobalScope;
const scope = worker.registration.scope;
const prefix = `lampfall ${scope} `;
const cacheName = prefix + build;
const addressOf = (address: string): string => new URL(address, scope).href;

const base64Of = (bytes: ArrayBuffer): string => btoa(String.fromCharCode(...new Uint8Array(bytes)));

/** A response with the very bytes that were built, or null. */
const proved = async (response: Response | undefined, hash: string): Promise<Response | null> => {
  if (!response?.ok) return null;
  const bytes = await response.arrayBuffer();
  if (base64Of(await crypto.subtle.digest('SHA-256', bytes)) !== hash) return null;
  const headers = new Headers();
  for (const name of ['content-type', 'content-security-policy']) {
    const value = response.headers.get(name);
    if (value !== null) headers.set(name, value);
  }
  return new Response(bytes, { headers });
};

/** Files with their hash in their name can't have changed: those that are here already are not fetched again. */
const keep = async (cache: Cache, [address, hash]: (typeof files)[number]): Promise<void> => {
  const url = addressOf(address);
  const response =
    (await proved(await caches.match(url), hash)) ?? (await proved(await fetch(url, { cache: 'no-cache' }), hash));
  if (!response) throw new Error(`${address} is not of this build`);
  await cache.put(url, response);
};

const keepAll = async (): Promise<void> => {
  // what is there already may be what an open page lives on
  const wasThere = await caches.has(cacheName);
  const cache = await caches.open(cacheName);
  try {
    // a few at a time leave the network to the page
    for (let i = 0; i < files.length; i += 4) await Promise.all(files.slice(i, i + 4).map((file) => keep(cache, file)));
  } catch (error) {
    if (!wasThere) await caches.delete(cacheName);
    throw error;
  }
};

/** Each open page holds a lock with the address of its script: builds before this one go when no page of them is open. */
const dropOld = async (): Promise<void> => {
  const { waiting, installing } = worker.registration;
  if (waiting || installing || !navigator.locks) return;
  const open = ((await navigator.locks.query()).held ?? []).map(({ name }) => name ?? '');
  for (const name of await caches.keys()) {
    if (!name.startsWith(prefix) || name === cacheName) continue;
    const old = await caches.open(name);
    const needed = await Promise.all(open.map((url) => old.match(url)));
    if (!needed.some(Boolean)) await caches.delete(name);
  }
};

const answer = async (request: Request): Promise<Response> => {
  const isPage = request.mode === 'navigate';
  const own = await caches.open(cacheName);
  const kept = (await own.match(isPage ? scope : request)) ?? (await caches.match(request));
  return kept ?? fetch(request);
};

worker.addEventListener('install', (event) => event.waitUntil(keepAll()));
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim().then(dropOld)));
worker.addEventListener('message', (event) => {
  if (event.data === 'take-up') void worker.skipWaiting();
  // the browser may throw a cache away and leave the worker
  if (event.data === 'keep-again') event.waitUntil(keepAll().then(() => event.source?.postMessage('kept-again')));
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  // nobody else is ever asked for anything
  if (url.origin !== worker.location.origin) return event.respondWith(Response.error());
  if (request.method !== 'GET') return;
  if (request.mode !== 'navigate') return event.respondWith(answer(request));
  const page = url.origin + url.pathname;
  if (page !== scope && page !== addressOf('index.html')) return;
  event.respondWith(answer(request));
  event.waitUntil(dropOld());
});

export {};
