/*
 * Keeps the bench and pieces that were looked at, for where there is no network. Pages come from the
 * network if it answers, and only then from what is kept. VERSION and FILES are written above.
 *
 * Pages belong to one account: the header says whose they are, and the pages of one are thrown away
 * when another's is seen, or at sign-out. Entries that wait are not kept here (js/store.js).
 */
const ROOT = new URL("./", self.location).pathname;
const OF_THIS_VERSION = "files-" + VERSION;
const PAGES = "pages";
const OWNER = ROOT + "owner-of-the-pages";
const ACCOUNT = "Flangewright-Account";
const PATIENCE_MS = 8000;
const KEPT_PAGES = /^(builds\/\d+\/bench|pieces\/\d+)$/;
const NOT_REACHED = [502, 503, 504];

self.addEventListener("install", (event) => event.waitUntil(keepFiles().then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(dropOldFiles().then(() => self.clients.claim())));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin || !url.pathname.startsWith(ROOT)) {
    return;
  }
  const path = url.pathname.slice(ROOT.length);
  if (request.method === "POST" && path === "sign-out") {
    event.waitUntil(caches.delete(PAGES));
    event.respondWith(fetch(request).catch(offlinePage));
  } else if (request.method === "GET" && FILES.includes(path)) {
    event.respondWith(file(request));
  } else if (request.method === "GET" && KEPT_PAGES.test(path)) {
    event.respondWith(page(event));
  } else if (request.mode === "navigate" && request.method === "GET") {
    event.respondWith(fetch(request).then(noticed).catch(offlinePage));
  }
});

async function keepFiles() {
  const files = await caches.open(OF_THIS_VERSION);
  // without cookies, so that what is kept shows nobody's name; past the browser's own cache
  await files.addAll(FILES.map((path) => new Request(ROOT + path, { cache: "reload", credentials: "omit" })));
}

async function dropOldFiles() {
  const old = (await caches.keys()).filter((name) => name.startsWith("files-") && name !== OF_THIS_VERSION);
  await Promise.all(old.map((name) => caches.delete(name)));
}

async function file(request) {
  return (await caches.match(request, { cacheName: OF_THIS_VERSION, ignoreSearch: true })) ?? fetch(request);
}

async function page(event) {
  const fromNetwork = fetch(event.request).then(keep);
  event.waitUntil(fromNetwork.catch(() => {}));
  const kept = await keptPage(event.request);
  if (!kept) {
    return fromNetwork.catch(offlinePage);
  }
  const answer = await Promise.race([fromNetwork.catch(() => null), after(PATIENCE_MS)]);
  return answer && !NOT_REACHED.includes(answer.status) ? answer : dated(kept);
}

function after(ms) {
  return new Promise((resolve) => setTimeout(() => resolve(null), ms));
}

async function keptPage(request) {
  const pages = await caches.open(PAGES);
  return (await pages.match(request)) ?? pages.match(request, { ignoreSearch: true });
}

async function keep(response) {
  await noticed(response);
  if (response.ok && !response.redirected && response.headers.has(ACCOUNT)) {
    await (await caches.open(PAGES)).put(response.url, response.clone());
  }
  return response;
}

/** Throws the pages of one account away when the answer is another's. */
async function noticed(response) {
  const account = response.headers.get(ACCOUNT);
  if (account && account !== (await owner())) {
    await caches.delete(PAGES);
    await (await caches.open(PAGES)).put(OWNER, new Response(account));
  }
  return response;
}

async function owner() {
  const noted = await (await caches.open(PAGES)).match(OWNER);
  return noted ? noted.text() : null;
}

/** The kept page, marked with the time at which it was true, so that it can say so. */
async function dated(kept) {
  const headers = new Headers(kept.headers);
  headers.delete("Content-Encoding");
  headers.delete("Content-Length");
  const time = new Date(kept.headers.get("Date")).toISOString();
  const html = (await kept.text()).replace("<html ", `<html data-kept="${time}" `);
  return new Response(html, { headers });
}

async function offlinePage() {
  return (await caches.match(ROOT + "offline", { cacheName: OF_THIS_VERSION })) ?? Response.error();
}
