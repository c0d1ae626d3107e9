// Filled in by site/scripts/serviceWorker.ts: path → content hash of every file to keep.
const FILES = __FILES__;
// What a job needs is kept at once; the rest (API, validation) where the reader asks for it.
const REST = __REST__;
const CACHE = 'slantpath-core-__VERSION__';
const LARGE = 'slantpath-rest-__VERSION__';
const ALL = { ...FILES, ...REST };

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

async function keepAll(name, files) {
  const cache = await caches.open(name);
  const left = Object.entries(files);
  const take = async () => {
    for (let next = left.pop(); next; next = left.pop()) await keep(cache, ...next);
  };
  await Promise.all(Array.from({ length: 6 }, take));
  // Only now is it whole.
  await cache.put('/.kept', new Response('yes'));
  for (const client of await self.clients.matchAll({ includeUncontrolled: true }))
    client.postMessage('kept');
}

self.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      await keepAll(CACHE, FILES);
      if ((await caches.keys()).some((name) => name.startsWith('slantpath-rest-')))
        await keepAll(LARGE, REST);
      // The first version takes over at once; a newer one waits until the reader asks for it.
      if (!self.registration.active) await self.skipWaiting();
    })(),
  );
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
  if (event.data === 'keep the rest') event.waitUntil(keepAll(LARGE, REST));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys())
        if (name.startsWith('slantpath-') && name !== CACHE && name !== LARGE)
          await caches.delete(name);
      await self.clients.claim();
    })(),
  );
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  const path = fileOf(url.pathname);
  const hash = ALL[path];
  if (hash === undefined && event.request.mode !== 'navigate') return;
  event.respondWith(
    (async () => {
      const kept = hash && (await caches.match(`${path}?v=${hash}`));
      if (kept) return kept;
      try {
        return await fetch(event.request);
      } catch (error) {
        if (event.request.mode !== 'navigate') throw error;
        // An address without its last slash, else a page that says what is missing.
        const folder = `${url.pathname}/index.html`;
        if (ALL[folder]) return Response.redirect(`${url.pathname}/${url.search}`);
        return new Response(
          '<!doctype html><meta name="viewport" content="width=device-width"><title>Not kept</title><body style="font:1.1rem/1.5 sans-serif;margin:2rem"><h1>This page is not kept on this device</h1><p><a href="/">To the start</a>. With signal, choose "Keep everything" in the header.',
          { status: 503, headers: { 'content-type': 'text/html; charset=utf-8' } },
        );
      }
    })(),
  );
});
