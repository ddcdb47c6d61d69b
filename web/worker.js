"use strict";
// Keeps one whole version of the site on the device. In place of go-app's own
// worker, which can be left with half a cache, fills it with stale files,
// deletes the caches of other apps and knows no address with a query.

const VERSION = "{{version}}";
const FILES = "{{files}}"; // the address of each file below the scope, and its digest
const PROGRAM = "{{program}}"; // its file, its size, and the digest of the packed copy
const FIRST = "{{first}}"; // the page's first script
const NOWHERE = "{{nowhere}}"; // the page for an address that is none
const START = "{{start}}"; // what says, by itself, that the program can't start

const SCOPE = new URL(self.registration.scope).pathname;
// With the scope in the name, two copies on one host leave each other's caches
// alone.
const OURS = `roofside-${SCOPE}-`;
const CACHE = OURS + VERSION;
const SINCE = SCOPE + "kept-since"; // beside the files: when all of them were there

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(dropOlder()));

// A new worker waits until the page asks, so that no version changes under the
// hands of someone who is typing.
self.addEventListener("message", (event) => {
  if (event.data?.roofside === "take over") event.waitUntil(self.skipWaiting());
  if (event.data?.roofside === "kept") event.waitUntil(whole().then((said) => event.ports[0].postMessage(said)));
  if (event.data?.roofside === "prove") event.waitUntil(prove().then((said) => event.ports[0].postMessage(said)));
});

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin || !url.pathname.startsWith(SCOPE)) return;
  const path = url.pathname.slice(SCOPE.length);
  const navigation = event.request.mode === "navigate";
  const file = [path, ...(navigation ? [path.replace(/index\.html$/, ""), path + "/"] : [])].find((name) => Object.hasOwn(FILES, name));
  if (file !== undefined) {
    event.respondWith(kept(file, event.request));
  } else if (navigation) {
    // The host knows better what else stands there; without it, this page shows what
    // there is.
    event.respondWith(fetch(event.request).catch(() => page(NOWHERE, 404)));
  }
});

// fill gets every file or fails. A file that is in the cache has been proven by
// its digest, so an install that was cut short goes on where it stopped.
async function fill() {
  try {
    const cache = await caches.open(CACHE);
    await Promise.all(Object.keys(FILES).map(async (file) => {
      if (!(await cache.match(SCOPE + file, { ignoreVary: true }))) await keep(cache, file);
    }));
    await cache.put(SINCE, new Response(String(Date.now())));
  } catch (error) {
    const failed = error.name === "QuotaExceededError" ? "full" : "cut";
    for (const page of await self.clients.matchAll({ includeUncontrolled: true })) page.postMessage({ roofside: { failed } });
    throw error;
  }
}

// whole tells the version and since when all of it is kept; nothing where a file is gone.
async function whole() {
  const cache = await caches.open(CACHE);
  const kept = new Set((await cache.keys()).map((request) => new URL(request.url).pathname));
  if (!Object.keys(FILES).every((file) => kept.has(SCOPE + file))) return null;
  const since = await cache.match(SINCE);
  return { version: VERSION, since: Number(await since?.text()) || 0 };
}

// keep fetches one file past any stale copy. The digest refuses a file of
// another version, as a publish half way through would bring.
async function keep(cache, file) {
  const answer = await (file === PROGRAM.file ? program() : fetch(SCOPE + file, { cache: "no-cache", integrity: FILES[file] }));
  if (!answer.ok) throw new Error(`${file}: the host answers ${answer.status}`);
  // A navigation refuses an answer that tells of a redirect.
  const plain = answer.redirected ? new Response(answer.body, { headers: answer.headers }) : answer;
  await cache.put(SCOPE + file, plain.clone());
  return plain;
}

// program fetches the program as web/first/program.js does, so that what the page
// has fetched on the first visit need not come twice.
async function program() {
  const address = SCOPE + PROGRAM.file;
  const stop = new AbortController();
  const plain = await fetch(address, { cache: "no-cache", signal: stop.signal });
  const length = plain.headers.get("Content-Length");
  if (typeof DecompressionStream === "undefined" || plain.headers.has("Content-Encoding") || length !== null && Number(length) < PROGRAM.size) return proven(plain);
  stop.abort();
  // Where the host has the browser unpack it, the digest is that of the program.
  const small = await fetch(address + ".gz", { cache: "no-cache", integrity: `${PROGRAM.packed} ${FILES[PROGRAM.file]}` }).catch(() => null);
  if (!small?.ok) return fetch(address, { cache: "no-cache", integrity: FILES[PROGRAM.file] });
  const body = small.headers.has("Content-Encoding") ? small.body : small.body.pipeThrough(new DecompressionStream("gzip"));
  return new Response(body, { headers: { "Content-Type": "application/wasm" } });
}

// proven gives an answer again if it has the program's digest. The browser would
// compare by itself, but only tell of an answer when all of it is there.
async function proven(answer) {
  if (!answer.ok) return answer;
  const bytes = await answer.arrayBuffer();
  if (await digest(bytes) !== FILES[PROGRAM.file]) throw new Error(`${PROGRAM.file}: of another version`);
  return new Response(bytes, { headers: { "Content-Type": "application/wasm" } });
}

async function digest(bytes) {
  const sum = await crypto.subtle.digest("SHA-256", bytes);
  return "sha256-" + btoa(String.fromCharCode(...new Uint8Array(sum)));
}

// sound gives a kept answer again if it still is the file that was kept, and nothing
// otherwise: a device may damage or empty what it holds.
async function sound(answer, file) {
  const bytes = await answer.arrayBuffer().catch(() => null);
  return bytes && await digest(bytes) === FILES[file] ? new Response(bytes, { headers: answer.headers }) : undefined;
}

// prove looks at every kept file, fetches those again that are damaged or gone, and
// tells how many were mended and how many could not be.
async function prove() {
  const cache = await caches.open(CACHE);
  const said = { mended: 0, damaged: 0 };
  for (const file of Object.keys(FILES)) {
    const found = await cache.match(SCOPE + file, { ignoreVary: true }).catch(() => null);
    if (found && await sound(found, file)) continue;
    await keep(cache, file).then(() => said.mended++, () => said.damaged++);
  }
  return said;
}

// kept gives a file off the device. All but the program are small enough to be proven
// each time; the program is when it fails to start, see web/first/start.js.
async function kept(file, request) {
  const cache = await caches.open(CACHE);
  const found = await cache.match(SCOPE + file, { ignoreVary: true });
  const whole = found && file !== PROGRAM.file ? await sound(found, file) : found;
  if (whole) return whole;
  // Someone cleared the cache, or it is damaged. If the host still has this version
  // the file is put back; otherwise all there is comes from the host, and is of one
  // version. Without the host, the page says what it can.
  return keep(cache, file).catch(() => fetch(request)).catch(() => instead(file, request));
}

function instead(file, request) {
  const prefix = SCOPE === "/" ? "roofside/" : `roofside@${SCOPE}`; // as web/first/storage.js has it
  const alone = `Object.assign((window.roofside ??= {}), { alone: true, prefix: ${JSON.stringify(prefix)} });\n${START}`;
  if (file === FIRST) return new Response(alone, { headers: { "Content-Type": "text/javascript" } });
  if (request.mode === "navigate") {
    return page(`<!DOCTYPE html><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Roofside</title><body><script>${alone}</script>`, 200);
  }
  return Response.error();
}

const page = (text, status) => new Response(text, { status, headers: { "Content-Type": "text/html; charset=utf-8" } });

async function dropOlder() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
}
