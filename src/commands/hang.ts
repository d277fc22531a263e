import { failure } from "../scene/errors"
import { applyHang, type FlattestHang } from "../scene/hills"
import type { Scene } from "../scene/schema"
import { sameButPose } from "../state/same"
import { edits } from "../words/edits"
import type { Command } from "./command"

/**
 * Puts an answer of the flattest-hang search on the bow: takes off what it moves and hangs its weight, as one undo
 * step. An answer for another scene than the one on the bench is refused: its places may no longer be there. How the
 * bow is held does not count: the search looks at every slope at full draw, and hanging keeps the pose.
 */
export const hangWeight: Command<{ asked: Scene; answer: FlattestHang; name: string }> = {
  id: "hang-weight",
  run(bench, { asked, answer, name }) {
    if (!sameButPose(asked, bench.store.getState().scene)) {
      return failure({ code: "not-allowed", path: "", message: edits.otherBow })
    }
    const { rig } = applyHang(asked, answer)
    return bench.change(edits.swingHung(name), (draft) => {
      draft.rig = structuredClone(rig) as typeof draft.rig
    })
  },
}
