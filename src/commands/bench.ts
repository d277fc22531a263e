import type { Scene, Target } from "../scene/schema"
import { newScene } from "../scene/templates"
import { type CameraPreset, hasUnsavedChanges } from "../state/bench"
import type { Overlay, Preferences } from "../state/preferences"
import { type Command, DONE } from "./command"

const walk = (id: "undo" | "redo", label: string, shortcut: string, enabled: Command["enabled"]): Command => ({
  id,
  label,
  shortcut,
  enabled,
  run(bench) {
    bench[id]()
    return DONE
  },
})

export const undo = walk(
  "undo",
  "Undo",
  "mod+z",
  ({ history, gesture }) => history.past.length > 0 || gesture?.entry != null,
)
export const redo = walk("redo", "Redo", "mod+shift+z", ({ history }) => history.future.length > 0)

/** Starts over with a plain bow; what was on the bench is one undo away. */
export const newBench: Command = {
  id: "new",
  label: "New",
  run: (bench) => bench.load("new bow", newScene(), { fileName: null, saved: true }),
}

/** Puts a checked scene on the bench. */
export const openScene: Command<{ scene: Scene; fileName: string | null; saved: boolean }> = {
  id: "open-scene",
  label: "Open",
  run: (bench, { scene, fileName, saved }) => bench.load(`opened ${scene.name}`, scene, { fileName, saved }),
}

export const rename: Command<{ name: string }> = {
  id: "rename",
  label: "Name the setup",
  run: (bench, { name }) =>
    bench.change("setup named", (draft) => {
      draft.name = name
    }),
}

export const writeNotes: Command<{ notes: string }> = {
  id: "write-notes",
  label: "Notes",
  run: (bench, { notes }) =>
    bench.change("notes", (draft) => {
      draft.notes = notes
    }),
}

export const setHand: Command<{ hand: "right" | "left" }> = {
  id: "set-hand",
  label: "Handedness",
  run: (bench, { hand }) =>
    bench.change(`${hand}-handed`, (draft) => {
      draft.bow.hand = hand
    }),
}

/** Sets or, with undefined, drops one target. */
export const setTarget: Command<{ target: Partial<Target> }> = {
  id: "set-target",
  label: "Target",
  run(bench, { target }) {
    return bench.change("target", (draft) => {
      for (const [key, value] of Object.entries(target)) {
        if (value === undefined) delete draft.target[key as keyof Target]
        else Object.assign(draft.target, { [key]: value })
      }
    })
  },
}

export const setPreferences: Command<Partial<Preferences>> = {
  id: "set-preferences",
  label: "Preferences",
  run(bench, changes) {
    bench.setPreferences(changes)
    return DONE
  },
}

export const toggleOverlay: Command<Overlay> = {
  id: "toggle-overlay",
  label: "Show or hide",
  run(bench, overlay) {
    const { show } = bench.store.getState().preferences
    bench.setPreferences({ show: { ...show, [overlay]: !show[overlay] } })
    return DONE
  },
}

export const lookFrom: Command<CameraPreset> = {
  id: "look-from",
  label: "Look from",
  run(bench, camera) {
    bench.setView({ camera })
    return DONE
  },
}

/** Marks a part, by its path, in table and picture; null for none. */
export const select: Command<string | null> = {
  id: "select",
  label: "Select a part",
  run(bench, path) {
    bench.setView({ selected: path })
    return DONE
  },
}

export const hover: Command<string | null> = {
  id: "hover",
  label: "Point at a part",
  run(bench, path) {
    if (bench.store.getState().hovered !== path) bench.setView({ hovered: path })
    return DONE
  },
}

export const unsaved = hasUnsavedChanges
