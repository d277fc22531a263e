import { chainAt } from "../scene/address"
import type { Scene } from "../scene/schema"
import type { ChainEdit } from "../scene/suggest"
import type { Command } from "./command"
import { nowhere } from "./parts"

/** Puts parts into chains and takes others out, one edit after the other, all or none: one change. */
export const editChains: Command<{ label: string; edits: readonly ChainEdit[] }> = {
  id: "edit-chains",
  run(bench, { label, edits }) {
    const { scene } = bench.store.getState()
    const lost = edits.find(({ chain }) => chainAt(scene, chain) === undefined)
    if (lost !== undefined) return nowhere(lost.chain)
    return bench.change(label, (draft) => {
      for (const { chain, index, put } of edits) {
        const list = chainAt(draft as Scene, chain)
        if (put === null) list?.splice(index, 1)
        else list?.splice(index, 0, structuredClone(put))
      }
    })
  },
}
