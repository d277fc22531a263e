import type { Bench } from "../../state/bench"
import { offline } from "../../words/offline"

/** A page that stays open for days looks for a new version when it is looked at again, at most this often, ms. */
const LOOK_EVERY = 3_600_000

/**
 * Has the browser keep the whole bench, so that it opens without a network, and says when a newer one has been fetched.
 * Nothing is changed under a page that is open: it goes on as it is until it is closed or the coach asks.
 */
export async function keepOffline(bench: Bench): Promise<void> {
  // Not there on a plain address of another machine, nor in some private windows.
  if (!("serviceWorker" in navigator)) return
  const registration = await navigator.serviceWorker.register("sw.js").catch(() => null)
  if (registration === null) return
  const announce = (waiting: ServiceWorker) => whenQuiet(bench, () => offer(bench, waiting))
  if (registration.waiting !== null) announce(registration.waiting)
  registration.addEventListener("updatefound", () => {
    const coming = registration.installing
    coming?.addEventListener("statechange", () => {
      // The very first one has nothing to take the place of.
      if (coming.state === "installed" && navigator.serviceWorker.controller !== null) announce(coming)
    })
  })
  let looked = performance.now()
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || performance.now() - looked < LOOK_EVERY) return
    looked = performance.now()
    registration.update().catch(() => undefined)
  })
}

function offer(bench: Bench, waiting: ServiceWorker): void {
  bench.setView({
    notice: {
      tone: "info",
      text: offline.newer,
      errors: [],
      offer: {
        label: offline.openNow,
        run() {
          navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true })
          waiting.postMessage("take over")
        },
      },
    },
  })
}

/** Runs `then` once, at a moment when nothing is being dragged and no other notice stands. */
export function whenQuiet({ store }: Pick<Bench, "store">, then: () => void): void {
  const quiet = () => store.getState().gesture === null && store.getState().notice === null
  if (quiet()) {
    then()
    return
  }
  const stop = store.subscribe(() => {
    if (!quiet()) return
    stop()
    then()
  })
}
