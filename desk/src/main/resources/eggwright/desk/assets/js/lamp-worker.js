// Keeps the lamp page on the phone, so that it starts where there is no signal. FILES is written by the desk: the page
// and everything that it needs, under names that change with their content.

const CACHE = 'lamp-' + FILES.version;

self.addEventListener('install', event => {
  event.waitUntil((async () => {
    const cache = await caches.open(CACHE);
    await cache.addAll(FILES.names.map(name => new Request(name, { cache: 'reload' })));
    await self.skipWaiting();
  })());
});

self.addEventListener('activate', event => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (name.startsWith('lamp-') && name !== CACHE) await caches.delete(name);
    await self.clients.claim();
  })());
});

self.addEventListener('fetch', event => {
  const { pathname } = new URL(event.request.url);
  if (event.request.method !== 'GET' || !FILES.names.includes(pathname)) return;
  event.respondWith((async () => (await (await caches.open(CACHE)).match(pathname)) ?? fetch(event.request))());
});
