import type { Overlay, Preferences } from "../state/preferences"
import { type Command, DONE } from "./command"

export const setPreferences: Command<Partial<Preferences>> = {
  id: "set-preferences",
  run(bench, changes) {
    bench.setPreferences(changes)
    return DONE
  },
}

/** Shows or hides one thing in the picture. */
export const toggleOverlay: Command<Overlay> = {
  id: "toggle-overlay",
  run(bench, overlay) {
    const { show } = bench.store.getState().preferences
    bench.setPreferences({ show: { ...show, [overlay]: !show[overlay] } })
    return DONE
  },
}
