import { setHand } from "../commands/setup"
import { useBench, useLive } from "../state/useBench"
import { Choice } from "./Choice"
import { useProblem } from "./Problem"

/** Whether the archer shoots right- or left-handed, and what that changes. */
export function Handedness() {
  const bench = useBench()
  const hand = useLive(({ scene }) => scene.bow.hand)
  const { problem, told } = useProblem()
  return (
    <>
      <Choice
        name="Archer shoots"
        value={hand}
        options={[
          ["right", "right-handed"],
          ["left", "left-handed"],
        ]}
        onChoose={(next) => told(setHand.run(bench, { hand: next }))}
      />
      <p className="sheet-hint">
        This mirrors only how the riser is drawn. The numbers you entered (sight, mounts, side rods) stay as they are.
      </p>
      {problem}
    </>
  )
}
