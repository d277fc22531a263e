import type { Accessory } from "../scene/schema"
import { newAccessory } from "../scene/templates"
import { edits } from "../words/edits"
import type { Command } from "./command"
import { nowhere } from "./parts"

/** The box an accessory is given before anyone measures it, mm: a sight's block or a quiver's foot, invented. */
const FIRST_SIZE: readonly [number, number, number] = [40, 60, 30]

/** Adds an accessory in front of the riser, at the end of the list. */
export const addAccessory: Command<{ name: string }> = {
  id: "add-accessory",
  run(bench, { name }) {
    return bench.change(edits.added(name), (draft) => {
      draft.accessories.push(newAccessory(name) as (typeof draft.accessories)[number])
    })
  },
}

/** Makes an accessory a box with a size, which counts in the turn resistance, or a point. */
export const setBoxed: Command<{ index: number; boxed: boolean }> = {
  id: "set-boxed",
  run(bench, { index, boxed }) {
    const found: Accessory | undefined = bench.store.getState().scene.accessories[index]
    if (found === undefined) {
      return nowhere(["accessories", index])
    }
    return bench.change((boxed ? edits.sized : edits.unsized)(found.name), (draft) => {
      const accessory = draft.accessories[index]
      if (accessory === undefined) return
      if (!boxed) delete accessory.sizeMm
      else accessory.sizeMm ??= [...FIRST_SIZE]
    })
  },
}
