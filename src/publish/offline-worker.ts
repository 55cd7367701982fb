/**
 * The script that keeps the page for weighing in, and what that page is made of, on the reader's device, so that it
 * opens beside a tank without a network. It answers for the files it was given and for nothing else: the rest of the
 * site is never kept. Its cache is named by the files' content, so that two builds of the same content are alike and
 * another content never meets an old file.
 *
 * @param version a hash of the content of all files
 * @param page the page's own address
 * @param files the addresses of all files, the page's among them, from the host on
 */
export function offlineWorker(version: string, page: string, files: readonly string[]): string {
  return `// Keeps the page for weighing in for when there is no network; nothing else of the site.
const page = ${JSON.stringify(page)};
const files = ${JSON.stringify(files, null, 2)};
const ours = 'tankside-weigh ' + page + ' ';
const name = ours + ${JSON.stringify(version)};
const kept = new Set(files);

addEventListener('install', (event) => event.waitUntil(keep()));
addEventListener('activate', (event) => event.waitUntil(letGo()));
addEventListener('fetch', (event) => {
  const { origin, pathname } = new URL(event.request.url);
  if (event.request.method !== 'GET' || origin !== location.origin || !kept.has(pathname)) return;
  event.respondWith(pathname === page ? newest(event.request) : fromDevice(event.request, pathname));
});

async function keep() {
  const cache = await caches.open(name);
  await cache.addAll(files.map((file) => new Request(file, { cache: 'no-cache' })));
}

// Only once no page is open any more that an older one of these serves.
async function letGo() {
  for (const each of await caches.keys()) if (each.startsWith(ours) && each !== name) await caches.delete(each);
  await clients.claim();
}

async function fromDevice(request, pathname) {
  const cache = await caches.open(name);
  return (await cache.match(pathname)) ?? fetch(request);
}

// The page as the site has it now; as it was kept where there is no network, or one too weak to answer.
async function newest(request) {
  const cached = await (await caches.open(name)).match(page);
  if (!cached) return fetch(request);
  const late = new Promise((done) => setTimeout(() => done(cached), 2500));
  const found = fetch(request).then((answer) => (answer.ok ? answer : cached), () => cached);
  return Promise.race([found, late]);
}
`;
}
