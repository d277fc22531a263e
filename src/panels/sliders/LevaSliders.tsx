import { useRef, useState } from "react"
import type { UnitChoice } from "../../describe/format"
import { useBench } from "../../state/useBench"
import { useProblem } from "../Problem"
import type { SliderGroup } from "./groups"
import { LevaGroup } from "./LevaGroup"
import { useSliderGesture } from "./useSliderGesture"

/**
 * The sliders under their headings. leva's own folders open to the pointer only, so each heading is the page's, with a
 * leva panel below it; the titles in `folded` are closed.
 */
export function LevaSliders({
  groups,
  units,
  folded,
}: {
  groups: readonly SliderGroup[]
  units: UnitChoice
  folded: Set<string>
}) {
  const bench = useBench()
  const host = useRef<HTMLDivElement>(null)
  const { gesture, round } = useSliderGesture(bench, host)
  const { problem, told } = useProblem()
  const [firstFolded] = useState(() => new Set(folded))
  return (
    <div ref={host}>
      {problem}
      {groups.map((group, place) => (
        <details
          key={group.title}
          className="sliders-group"
          open={!firstFolded.has(group.title)}
          onToggle={(event) => (event.currentTarget.open ? folded.delete(group.title) : folded.add(group.title))}
        >
          <summary>{group.title}</summary>
          <LevaGroup group={group} place={place} units={units} gesture={gesture} round={round} told={told} />
        </details>
      ))}
    </div>
  )
}
