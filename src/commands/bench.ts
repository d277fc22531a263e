import type { Scene } from "../scene/schema"
import type { CameraPreset } from "../state/bench"
import { acts } from "../words/acts"
import { type Command, DONE, type NamedCommand } from "./command"

const walk = (id: "undo" | "redo", shortcut: string, enabled: Command["enabled"]): NamedCommand => ({
  id,
  label: acts[id],
  shortcut,
  enabled,
  run(bench) {
    bench[id]()
    return DONE
  },
})

export const undo = walk("undo", "mod+z", ({ history, gesture }) => history.past.length > 0 || gesture?.entry != null)
export const redo = walk("redo", "mod+shift+z", ({ history }) => history.future.length > 0)

/** Puts a checked scene on the bench. */
export const openScene: Command<{ scene: Scene; fileName: string | null; saved: boolean }> = {
  id: "open-scene",
  run: (bench, { scene, fileName, saved }) => bench.load(acts.opened(scene.name), scene, { fileName, saved }),
}

export const rename: Command<{ name: string }> = {
  id: "rename",
  run: (bench, { name }) =>
    bench.change(acts.named, (draft) => {
      draft.name = name
    }),
}

export const lookFrom: Command<CameraPreset> = {
  id: "look-from",
  run(bench, camera) {
    bench.setView({ camera })
    return DONE
  },
}

/** Marks a part, by its path, in table and picture; null for none. */
export const select: Command<string | null> = {
  id: "select",
  run(bench, path) {
    bench.setView({ selected: path })
    return DONE
  },
}

export const hover: Command<string | null> = {
  id: "hover",
  run(bench, path) {
    if (bench.store.getState().hovered !== path) bench.setView({ hovered: path })
    return DONE
  },
}
