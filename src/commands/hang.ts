import { failure } from "../scene/errors"
import { applyHang, type FlattestHang } from "../scene/hills"
import type { Scene } from "../scene/schema"
import type { Command } from "./command"

/**
 * Puts an answer of the flattest-hang search on the bow: takes off what it moves and hangs its weight, as one undo
 * step. An answer for another scene than the one on the bench is refused: its places may no longer be there.
 */
export const hangWeight: Command<{ asked: Scene; answer: FlattestHang; name: string }> = {
  id: "hang-weight",
  label: "Try this hang",
  run(bench, { asked, answer, name }) {
    if (bench.store.getState().scene !== asked) {
      return failure({ code: "not-allowed", path: "", message: "the bow has changed since the search; search again" })
    }
    const { rig } = applyHang(asked, answer)
    return bench.change(`swing weight hung: ${name}`, (draft) => {
      draft.rig = structuredClone(rig) as typeof draft.rig
    })
  },
}
