// Filled in by site/scripts/serviceWorker.ts: path → content hash of every file to keep.
const FILES = __FILES__;
const CACHE = 'slantpath-__VERSION__';

const fileOf = (pathname) => (pathname.endsWith('/') ? `${pathname}index.html` : pathname);

async function keep(cache, path, hash) {
  // A file that an older version holds with the same hash is copied, not fetched again.
  const key = `${path}?v=${hash}`;
  const old = await caches.match(key);
  if (old) return cache.put(key, old);
  const response = await fetch(path.replace(/index\.html$/, ''), { cache: 'no-cache' });
  if (!response.ok || response.redirected) throw new Error(`${path}: ${response.status}`);
  return cache.put(key, response);
}

self.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(CACHE);
      const left = Object.entries(FILES);
      const take = async () => {
        for (let next = left.pop(); next; next = left.pop()) await keep(cache, ...next);
      };
      await Promise.all(Array.from({ length: 6 }, take));
      // The first version takes over at once; a newer one waits until the reader asks for it.
      if (!self.registration.active) await self.skipWaiting();
    })(),
  );
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys())
        if (name.startsWith('slantpath-') && name !== CACHE) await caches.delete(name);
      await self.clients.claim();
    })(),
  );
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  const path = fileOf(url.pathname);
  const hash = FILES[path];
  if (hash === undefined) return;
  event.respondWith(
    (async () => (await caches.match(`${path}?v=${hash}`)) ?? fetch(event.request))(),
  );
});
