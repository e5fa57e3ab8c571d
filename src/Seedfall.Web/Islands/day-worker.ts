// The service worker: keeps chosen day sheets, the pages they are worked with and the files these are shown with, so that they open without a signal.
// Network first with four seconds' grace for pages, kept first for stamped files; nothing that is posted is ever kept.

interface Facts { version: string; shell: string[] }

interface Extended extends Event { waitUntil(work: Promise<unknown>): void }

interface Fetched extends Extended { request: Request; respondWith(answer: Promise<Response>): void }

interface Told extends Extended { data: { kind: string; lawn: string; name: string; still: string; dates: string[] }; ports: MessagePort[] }

declare const self: {
  seedfall: Facts;
  location: Location;
  clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", heard: (e: Extended) => void): void;
  addEventListener(type: "fetch", heard: (e: Fetched) => void): void;
  addEventListener(type: "message", heard: (e: Told) => void): void;
};

const NAME = `seedfall-${self.seedfall.version}`;
const GRACE_MS = 4_000;
const KEEP_MS = 7 * 86_400_000;
const KEPT = "seedfall-kept";
const HOME = "/day";

/** Pages of a lawn that are worked with on the lawn, kept beside its sheets. */
const TOOLS = ["spray-window/now", "spray-window", "sprayer/pace", "tank", "spreader"];

/** Hours kept beside a spray window, of those it leads to: at about 2 kB each on the wire. */
const MOST_HOURS = 24;
const AT_ONCE = 6;

self.addEventListener("install", (e) => e.waitUntil(install()));
self.addEventListener("activate", (e) => e.waitUntil(activate()));

self.addEventListener("fetch", (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== "GET" || url.origin !== self.location.origin) return;
  if (e.request.mode === "navigate") e.respondWith(page(e, url));
  else if (url.searchParams.has("v")) e.respondWith(file(e.request));
});

self.addEventListener("message", (e) => {
  if (e.data.kind === "take-over") e.waitUntil(self.skipWaiting());
  else if (e.data.kind === "keep") e.waitUntil(keep(e.data).then((full) => e.ports[0]?.postMessage({ full })));
  else if (e.data.kind === "list") e.waitUntil(list().then((kept) => e.ports[0]?.postMessage(kept)));
});

async function install(): Promise<void> {
  const cache = await caches.open(NAME);
  await cache.addAll(self.seedfall.shell);
  const home = await fetch(HOME, { cache: "no-store" });
  if (home.ok) await cache.put(HOME, home);
}

/** What older versions kept stays readable: it moves over with the files it is shown with. */
async function activate(): Promise<void> {
  const cache = await caches.open(NAME);
  for (const older of (await caches.keys()).filter((n) => n.startsWith("seedfall-") && n !== NAME)) {
    const from = await caches.open(older);
    for (const request of await from.keys()) {
      const answer = await from.match(request);
      if (answer && !(await cache.match(request))) await cache.put(request, answer);
    }
    await caches.delete(older);
  }
  await expire();
  await self.clients.claim();
}

async function file(request: Request): Promise<Response> {
  const held = await caches.match(request);
  if (held) return held;
  const answer = await fetch(request);
  if (answer.ok) await (await caches.open(NAME)).put(request, answer.clone()).catch(unkept);
  return answer;
}

async function page(e: Fetched, url: URL): Promise<Response> {
  const cache = await caches.open(NAME);
  const held = await heldFor(cache, url.pathname);
  const network = fetch(e.request);
  if (!held) return network.catch(async () => (await cache.match(HOME)) ?? Response.error());
  const fresh = network.then(async (answer) => {
    if (answer.status >= 500) return held();
    if (answer.ok && !answer.redirected && url.search === "") {
      const changed = await renew(cache, url.pathname, answer.clone()).catch(unkept);
      e.waitUntil(hours(cache, url.pathname, changed === true).catch(unkept));
    }
    else if (answer.status === 404) await cache.delete(url.pathname);
    return answer;
  }, () => held());
  e.waitUntil(fresh.catch(() => undefined));
  return Promise.race([fresh, new Promise<Response>((done) => setTimeout(() => void held().then(done), GRACE_MS))]);
}

/** The kept page of an address; for a lawn's day without a date the newest kept sheet that has begun. */
async function heldFor(cache: Cache, path: string): Promise<(() => Promise<Response>) | null> {
  const undated = /^\/lawns\/([^/]+)\/day\/?$/.exec(path);
  if (undated) {
    const today = new Date(Date.now() - new Date().getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
    const mine = (await list()).filter((k) => k.lawn === undated[1]).sort((a, b) => a.date.localeCompare(b.date));
    const best = mine.filter((k) => k.date <= (k.still || today)).pop() ?? mine[0];
    return best ? async () => Response.redirect(best.path) : null;
  }
  const answer = await cache.match(path);
  if (!answer) return null;
  const kept = Number(answer.headers.get(KEPT) ?? "0");
  if (kept > 0 && Date.now() - kept > KEEP_MS) {
    await cache.delete(path);
    return null;
  }
  return async () => (await cache.match(path)) ?? Response.error();
}

/** A page that is kept is kept as it was seen last. True where it says something else than before. */
async function renew(cache: Cache, path: string, answer: Response): Promise<boolean> {
  const old = await cache.match(path);
  const name = old?.headers.get(`${KEPT}-name`);
  if (path === HOME) await cache.put(path, answer);
  else if (name) return store(cache, path, answer, name, old?.headers.get(`${KEPT}-still`) ?? "");
  return false;
}

/** True where there was no room for all of it. */
async function keep(what: { lawn: string; name: string; still: string; dates: string[] }): Promise<boolean> {
  const cache = await caches.open(NAME);
  let full = false;
  for (const page of [...what.dates.map((date) => `day/${date}`), ...TOOLS]) {
    const path = `/lawns/${what.lawn}/${page}`;
    try {
      const answer = await fetch(path, { cache: "no-store" });
      if (answer.ok && !answer.redirected) await hours(cache, path, await store(cache, path, answer, encodeURIComponent(what.name), what.still));
    } catch (error) {
      // No signal, or no room: what was kept stays as it was.
      full ||= isFull(error);
    }
  }
  await expire();
  return full;
}

/** The hours a kept spray window leads to. They speak of its forecast: where it changed, one that cannot be read again goes. */
async function hours(cache: Cache, path: string, changed: boolean): Promise<void> {
  const window = path.endsWith("/spray-window") ? await cache.match(path) : undefined;
  if (!window) return;
  const [name, still] = ["name", "still"].map((fact) => window.headers.get(`${KEPT}-${fact}`) ?? "");
  const led = [...(await window.text()).matchAll(/href="(\/[^"]+\/spray-window\/hour\/[^"]+)"/g)].map((found) => found[1] as string);
  const wanted = [...new Set(led)].slice(0, MOST_HOURS);
  const there = (await cache.keys()).map((request) => new URL(request.url).pathname).filter((known) => known.startsWith(`${path}/hour/`));
  for (const gone of there.filter((known) => !wanted.includes(known))) await cache.delete(gone);
  const ask = wanted.filter((hour) => changed || !there.includes(hour));
  let failed: unknown = null;
  for (let i = 0; i < ask.length; i += AT_ONCE) {
    await Promise.all(ask.slice(i, i + AT_ONCE).map(async (hour) => {
      try {
        const answer = await fetch(hour, { cache: "no-store" });
        if (!answer.ok || answer.redirected) throw new Error(`${hour}: ${answer.status}`);
        await store(cache, hour, answer, name ?? "", still ?? "");
      } catch (error) {
        failed ??= error;
        await cache.delete(hour);
      }
    }));
  }
  if (isFull(failed)) throw failed;
}

const isFull = (error: unknown): boolean => error instanceof DOMException && error.name === "QuotaExceededError";

/** What finds no room is shown all the same. */
const unkept = (): undefined => undefined;

/** What a page says, without what differs each time it is asked for. */
const said = (text: string): string => text.replace(/<input type="hidden"[^>]*>|data-(?:kept|now)="[^"]*"/g, "");

/** A page with the day it was kept, which it can tell, and the stamped files it names. True where it says something else than before. */
async function store(cache: Cache, path: string, answer: Response, name: string, still: string): Promise<boolean> {
  const text = await answer.text();
  const old = await (await cache.match(path))?.text();
  const headers = new Headers(answer.headers);
  headers.set(KEPT, String(Date.now()));
  headers.set(`${KEPT}-name`, name);
  headers.set(`${KEPT}-still`, still);
  for (const gone of ["content-encoding", "content-length"]) headers.delete(gone);
  for (const [, address] of text.matchAll(/(?:href|src)="(\/[^"]+\?v=[0-9a-f]+)"/g)) {
    if (address && !(await caches.match(address))) await cache.add(address);
  }
  const kept = text.replace("<html", `<html data-kept="${Date.now()}"`);
  await cache.put(path, new Response(kept, { status: 200, headers }));
  return old === undefined || said(old) !== said(kept);
}

async function list(): Promise<{ path: string; lawn: string; name: string; date: string; until: number; still: string }[]> {
  const cache = await caches.open(NAME);
  const found = [];
  for (const request of await cache.keys()) {
    const path = new URL(request.url).pathname;
    const [, lawn, date] = /^\/lawns\/([^/]+)\/day\/([0-9-]{10})$/.exec(path) ?? [];
    const headers = (await cache.match(request))?.headers;
    const kept = Number(headers?.get(KEPT) ?? "0");
    if (lawn && date && kept > 0 && Date.now() - kept <= KEEP_MS) found.push({ path, lawn, date, name: decodeURIComponent(headers?.get(`${KEPT}-name`) ?? ""), until: kept + KEEP_MS, still: headers?.get(`${KEPT}-still`) ?? "" });
  }
  return found.sort((a, b) => a.name.localeCompare(b.name) || a.date.localeCompare(b.date));
}

/** Sheets go after seven days; with the last of them the files of older versions. */
async function expire(): Promise<void> {
  const cache = await caches.open(NAME);
  const shell = new Set(self.seedfall.shell);
  let kept = 0;
  const files: Request[] = [];
  for (const request of await cache.keys()) {
    const at = Number((await cache.match(request))?.headers.get(KEPT) ?? "0");
    const url = new URL(request.url);
    if (at > 0 && Date.now() - at > KEEP_MS) await cache.delete(request);
    else if (at > 0) kept++;
    else if (url.searchParams.has("v") && !shell.has(url.pathname + url.search)) files.push(request);
  }
  if (kept === 0) for (const old of files) await cache.delete(old);
}
