import { setHand } from "../commands/setup"
import { useBench, useLive } from "../state/useBench"
import { handedness as words } from "../words/handedness"
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
        name={words.shoots}
        value={hand}
        options={[
          ["right", words.right],
          ["left", words.left],
        ]}
        onChoose={(next) => told(setHand.run(bench, { hand: next }))}
      />
      <p className="sheet-hint">{words.mirrors}</p>
      {problem}
    </>
  )
}
