/**
 * The service worker: keeps every file of one build, and answers from there. A new build is fetched beside the old one
 * and waits; pages that are open go on with theirs until they are closed, or until one of them asks for the change.
 * `tests/tools/offline.ts` bundles this with the list of files.
 */

/** Everything the build has, relative to the page. */
declare const FILES: readonly string[]
/** Another one for every build that differs. */
declare const VERSION: string

interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void
}
interface AskedEvent extends Event {
  readonly request: Request
  respondWith(answer: Promise<Response>): void
}
interface Scope {
  readonly registration: { readonly scope: string }
  readonly clients: { claim(): Promise<void> }
  skipWaiting(): Promise<void>
  addEventListener(type: "install" | "activate", run: (event: WaitingEvent) => void): void
  addEventListener(type: "fetch", run: (event: AskedEvent) => void): void
  addEventListener(type: "message", run: (event: MessageEvent) => void): void
}

const scope = self as unknown as Scope
const PREFIX = "bench-"
const cacheName = PREFIX + VERSION
const page = () => new URL("index.html", scope.registration.scope).href

/** Built files with a hash in their name never change; the others are asked of the server, not of the browser's cache. */
const fresh = (file: string) => new Request(file, { cache: file.startsWith("assets/") ? "default" : "no-cache" })

scope.addEventListener("install", (event) => {
  event.waitUntil(caches.open(cacheName).then((cache) => cache.addAll(FILES.map(fresh))))
})

scope.addEventListener("activate", (event) => {
  event.waitUntil(forgetOld().then(() => scope.clients.claim()))
})

/** The build before this one is kept: another page may still be open with it. */
async function forgetOld(): Promise<void> {
  const old = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== cacheName)
  await Promise.all(old.slice(0, -1).map((name) => caches.delete(name)))
}

scope.addEventListener("message", ({ data }) => {
  if (data === "take over") void scope.skipWaiting()
})

scope.addEventListener("fetch", (event) => {
  const { request } = event
  const base = scope.registration.scope
  if (request.method !== "GET" || !request.url.startsWith(base)) return
  const address = request.url.replace(/[?#].*$/s, "")
  if (request.mode === "navigate" && address !== base && address !== page()) return
  event.respondWith(answer(request, request.mode === "navigate" ? page() : address))
})

async function answer(request: Request, address: string): Promise<Response> {
  const now = await caches.open(cacheName)
  return (await now.match(address)) ?? (await caches.match(address)) ?? fetch(request)
}
