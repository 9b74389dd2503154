// Keeps the whole app on the device. The build fills in the two constants below:
// FILES is [address, integrity] for each file, VERSION a hash of that list.
const VERSION = '@VERSION@';
const FILES = [/*@FILES@*/];

const SCOPE = self.registration.scope;
// One origin may hold several copies under different paths: each keeps to its own caches.
const PREFIX = `benchbook ${new URL(SCOPE).pathname} `;
const CACHE = PREFIX + VERSION;
const ADDRESSES = new Set(FILES.map(([path]) => new URL(path, SCOPE).href));

self.addEventListener('install', (event) => {
  event.waitUntil(keepAll());
});

// All files or none, and each exactly the one that was built: while a host is still
// serving a mixture of two versions, installing fails and the old version goes on.
async function keepAll() {
  const cache = await caches.open(CACHE);
  const requests = FILES.map(
    ([path, integrity]) => new Request(new URL(path, SCOPE), { cache: 'no-cache', integrity }),
  );
  try {
    await cache.addAll(requests);
  } catch (reason) {
    await caches.delete(CACHE);
    throw reason;
  }
}

self.addEventListener('activate', (event) => {
  event.waitUntil(takeOver());
});

async function takeOver() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

// A new version waits until the app says so: never in the middle of a game.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'take-over') self.skipWaiting();
  if (event.data?.type === 'version') event.ports[0]?.postMessage(VERSION);
});

self.addEventListener('fetch', (event) => {
  const address = kept(event.request);
  if (address) event.respondWith(fromCache(address, event.request));
});

/** The address of the kept file that answers this request, or undefined to let it pass. */
function kept(request) {
  if (request.method !== 'GET') return undefined;
  const url = new URL(request.url);
  url.hash = '';
  if (request.mode === 'navigate') {
    url.search = '';
    if (url.href === new URL('index.html', SCOPE).href) return SCOPE;
  }
  return ADDRESSES.has(url.href) ? url.href : undefined;
}

async function fromCache(address, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(address)) ?? fetch(request);
}
