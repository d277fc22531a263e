import { useEffect, useMemo } from "react"
import { useStore } from "./useStore"
import { compareSetup } from "../../commands/find"
import { questionFor } from "../../scene/find"
import type { Finder } from "../../state/finder"
import type { KitBox } from "../../state/kitBox"
import { useBench, useLive } from "../../state/useBench"
import "../choice.css"
import "../rig/rig.css"
import "../sheet.css"
import { Answers } from "./Answers"
import "./find.css"
import { type KitFiles, KitSection } from "./KitSection"
import { SearchSection } from "./SearchSection"
import { TargetSection } from "./TargetSection"

interface Props {
  readonly box: KitBox
  readonly finder: Finder
  readonly files: KitFiles
}

/** The question asked backwards: which setups of the pieces in a box bring this bow into its target. */
export function FindSheet({ box, finder, files }: Props) {
  const bench = useBench()
  const scene = useLive((state) => state.scene)
  const own = useStore(finder.store, (state) => state.question)
  // Twenty settings of one set of pieces are less use to look through than twenty sets.
  const suggested = useMemo(() => ({ ...questionFor(scene), variety: "pieces" as const }), [scene])
  const question = own ?? suggested
  useEffect(() => () => void compareSetup.run(bench, null), [bench])
  return (
    <div className="find-sheet">
      <KitSection box={box} files={files} />
      <TargetSection question={question} changed={own !== null} onChange={finder.setQuestion} />
      <SearchSection box={box} finder={finder} question={question} />
      <Answers finder={finder} />
    </div>
  )
}
