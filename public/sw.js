// The service worker: one build, whole or not at all. `bundle` fills in the build's id and the list of files.
//
// A new worker waits until the person says so (boot.js); it never replaces files under a running page.
"use strict";

const BUILD = "{{build}}";
const FILES = ["{{files}}"];

// How long an address may get: Chromium cuts none under 2 Mi.
const LONGEST = 2000000;

const CACHE = "bedwright-" + BUILD;
const SCOPE = self.registration.scope;
const KEPT = new Set(FILES.map((file) => new URL(file, SCOPE).href));

self.addEventListener("install", (event) => {
  event.waitUntil(install());
});

self.addEventListener("activate", (event) => {
  event.waitUntil(dropOtherBuilds().then(() => self.clients.claim()));
});

self.addEventListener("message", (event) => {
  const wanted = event.data && event.data.type;
  if (wanted === "SKIP_WAITING") {
    self.skipWaiting();
  } else if (wanted === "OFFLINE_STATE" && event.ports[0]) {
    const port = event.ports[0];
    event.waitUntil(
      missingFiles().then(
        (missing) => port.postMessage({ build: BUILD, missing }),
        (error) => port.postMessage({ build: BUILD, missing: FILES, error: String(error) }),
      ),
    );
  }
});

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) {
    // The page asks nobody else; should something try, it gets no answer.
    event.respondWith(Response.error());
    return;
  }
  if (request.method === "POST" && url.href === new URL("share", SCOPE).href) {
    event.respondWith(shared(request));
    return;
  }
  if (request.method !== "GET") {
    return;
  }
  const address = url.origin + url.pathname;
  if (KEPT.has(address)) {
    event.respondWith(fromCache(address, request));
  } else if (address === new URL("index.html", SCOPE).href) {
    event.respondWith(fromCache(SCOPE, request));
  } else if (request.mode === "navigate" && address.startsWith(SCOPE)) {
    // Relative addresses only hold at the scope itself, so an unknown page leads there.
    event.respondWith(fetch(request).catch(() => Response.redirect(SCOPE, 302)));
  }
});

// What another program shares, a file or a text: to the screen that takes jobs in, as a link would bring it. No host sees it.
async function shared(request) {
  let text = "";
  try {
    const form = await request.formData();
    const file = form.get("file");
    text = file && file.size > 0 ? await file.text() : ["text", "url", "title"].map((name) => form.get(name) || "").join("\n");
  } catch {
    // Nothing that can be read: the screen says how else it can be had.
  }
  const code = encodeURIComponent(text.trim());
  return Response.redirect(SCOPE + (code && code.length < LONGEST ? "#/open/" + code : "#/open"), 303);
}

// Fetches every file past the browser's own cache; a single miss fails the installation.
async function install() {
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(
      FILES.map(async (file) => {
        const address = new URL(file, SCOPE).href;
        const response = await fetch(address, { cache: "reload", credentials: "same-origin" });
        if (response.status !== 200) {
          throw new Error(file + ": " + response.status);
        }
        const body = await response.blob();
        if (file === "./" && !(await body.text()).includes('content="' + BUILD + '"')) {
          throw new Error("the host still gives the page of another build");
        }
        // Made anew: a response that was redirected may not answer a navigation.
        await cache.put(address, new Response(body, { headers: response.headers }));
      }),
    );
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

// The same host may carry this page under several paths, and caches belong to the host: only what lies below our
// own path is dropped.
async function dropOtherBuilds() {
  for (const name of await caches.keys()) {
    if (!name.startsWith("bedwright-") || name === CACHE) {
      continue;
    }
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      if (request.url.startsWith(SCOPE)) {
        await cache.delete(request);
      }
    }
    if ((await cache.keys()).length === 0) {
      await caches.delete(name);
    }
  }
}

async function missingFiles() {
  const cache = await caches.open(CACHE);
  const there = new Set((await cache.keys()).map((request) => request.url));
  return FILES.filter((file) => !there.has(new URL(file, SCOPE).href));
}

// A listed file comes from this build's cache. Should the browser have dropped it, the host may still have it.
async function fromCache(address, request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(address, { ignoreVary: true });
  return kept || fetch(request);
}
