import type { Target } from "../scene/schema"
import { newScene } from "../scene/templates"
import { edits } from "../words/edits"
import type { Command } from "./command"

/** Starts over with a plain bow; what was on the bench is one undo away. */
export const newBench: Command = {
  id: "new",
  run: (bench) => bench.load(edits.newBow, newScene(), { fileName: null, saved: true }),
}

export const writeNotes: Command<{ notes: string }> = {
  id: "write-notes",
  run: (bench, { notes }) =>
    bench.change(edits.notes, (draft) => {
      draft.notes = notes
    }),
}

export const setHand: Command<{ hand: "right" | "left" }> = {
  id: "set-hand",
  run: (bench, { hand }) =>
    bench.change(edits.handed[hand], (draft) => {
      draft.bow.hand = hand
    }),
}

/** Sets or, with undefined, drops one target. */
export const setTarget: Command<{ target: Partial<Target> }> = {
  id: "set-target",
  run(bench, { target }) {
    return bench.change(edits.target, (draft) => {
      for (const [key, value] of Object.entries(target)) {
        if (value === undefined) delete draft.target[key as keyof Target]
        else Object.assign(draft.target, { [key]: value })
      }
    })
  },
}
