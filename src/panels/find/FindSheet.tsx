import { type MouseEvent, useEffect, useMemo, useState } from "react"
import { flushSync } from "react-dom"
import { useStore } from "./useStore"
import { beforeTrying, compareSetup } from "../../commands/find"
import { type Outcome, questionFor } from "../../scene/find"
import type { RigEntry } from "../../scene/schema"
import type { Finder } from "../../state/finder"
import type { KitBox } from "../../state/kitBox"
import { useBench, useLive } from "../../state/useBench"
import "../choice.css"
import "../partMark.css"
import "../sections.css"
import "../sheet.css"
import { createFieldProblems, FieldProblemsContext } from "../fieldProblems"
import { Answers } from "./Answers"
import "./find.css"
import { type KitFiles, KitSection } from "./KitSection"
import { SearchSection } from "./SearchSection"
import { TargetSection } from "./TargetSection"
import { useEarlier } from "./useEarlier"

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
  const asked = useStore(finder.store, (state) => state.asked)
  const outcome = useStore(finder.store, (state) => state.outcome)
  const suggested = useMemo(() => {
    const bow = asked === null ? scene : beforeTrying(asked, rigsOf(outcome), scene)
    return { ...questionFor(bow), variety: "pieces" as const }
  }, [scene, asked, outcome])
  const question = own ?? suggested
  useEffect(() => () => void compareSetup.run(bench, null), [bench])
  const earlier = useEarlier(box, asked, question)
  const [problems] = useState(createFieldProblems)
  return (
    <FieldProblemsContext value={problems}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it only holds the buttons still; they stay the buttons */}
      <div className="find-sheet" onMouseDown={stayInField} onClickCapture={leaveField}>
        <KitSection box={box} files={files} />
        <TargetSection question={question} changed={own !== null} onChange={finder.setQuestion} />
        <SearchSection box={box} finder={finder} question={question} problems={problems} earlier={earlier} />
        <Answers finder={finder} earlier={earlier} />
      </div>
    </FieldProblemsContext>
  )
}

function rigsOf(outcome: Outcome | null): (readonly RigEntry[])[] {
  if (outcome?.kind !== "searched") return []
  const nearest = outcome.misses.flatMap((miss) => (miss.nearest === null ? [] : [miss.nearest.setup]))
  return [...outcome.setups, ...nearest].map(({ rig }) => rig)
}

const buttonOf = ({ target }: MouseEvent) => (target instanceof Element ? target.closest("button") : null)
const inField = () => document.activeElement instanceof HTMLInputElement

/**
 * A field that is left may show an error, and what stands below it moves: between the press and the release of a button
 * the click would be lost. So a press does not leave the field; the click does, before the button hears of it.
 */
function stayInField(event: MouseEvent) {
  if (inField() && buttonOf(event) !== null) event.preventDefault()
}

function leaveField(event: MouseEvent) {
  const button = buttonOf(event)
  if (button !== null && inField()) flushSync(() => button.focus({ preventScroll: true }))
}
