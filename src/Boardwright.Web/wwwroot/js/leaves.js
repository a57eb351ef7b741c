// @ts-check
/// <reference lib="webworker" />
// Keeps a copy of every page opened, to be shown when there is no signal. The yard's machine is always asked first; nothing that is posted passes here.
const shelf = "boardwright-leaves";
const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

worker.addEventListener("install", () => { worker.skipWaiting(); });
worker.addEventListener("activate", (event) => { event.waitUntil(worker.clients.claim()); });
worker.addEventListener("fetch", (event) => {
  const asked = event.request;
  const isPage = asked.mode === "navigate";
  if (asked.method === "GET" && (isPage || ["style", "script", "font"].includes(asked.destination))) {
    event.respondWith(leaf(asked, isPage));
  }
});

/** @param {Request} asked @param {boolean} isPage */
async function leaf(asked, isPage) {
  const leaves = await caches.open(shelf);
  try {
    const fresh = await fetch(asked);
    if (fresh.ok && fresh.type === "basic") {
      await leaves.put(asked, fresh.clone());
    }

    return fresh;
  } catch {
    return (await leaves.match(asked)) ?? (isPage ? await leaves.match("/write") : undefined) ?? Response.error();
  }
}
