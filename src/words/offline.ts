import { spoken } from "./language"

/** The page as it is kept for days without a network. */
export const offline = spoken("offline", {
  newer: "A newer version of the bench is ready. It opens the next time, or now: your work stays.",
  openNow: "Open it now",
})
