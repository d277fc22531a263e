import { useState } from "react"
import type { BenchState } from "../state/bench"
import { useLive } from "../state/useBench"
import { sliders } from "../words/sliders"
import { type SliderGroup, sliderGroups } from "./sliders/groups"
import { LevaSliders } from "./sliders/LevaSliders"
import "./sliders/sliders.css"

/** The key numbers as sliders, for trying things out by feel. */
export default function SlidersSheet() {
  const [select] = useState(shapeSelector)
  const [folded] = useState(() => new Set<string>())
  const { signature, groups } = useLive(select)
  const units = useLive(({ preferences }) => preferences)
  return (
    <section className="sliders" aria-label={sliders.label}>
      <p className="sliders-note">{sliders.hint}</p>
      <LevaSliders
        key={`${signature} ${units.lengthUnit} ${units.massUnit}`}
        groups={groups}
        units={units}
        folded={folded}
      />
    </section>
  )
}

interface Shape {
  readonly signature: string
  readonly groups: readonly SliderGroup[]
}

/** The same object until a slider comes, goes, is renamed or needs a longer way. */
function shapeSelector(): (state: BenchState) => Shape {
  let scene: BenchState["scene"] | null = null
  let shape: Shape = { signature: "", groups: [] }
  return (state) => {
    if (state.scene === scene) return shape
    scene = state.scene
    const groups = sliderGroups(scene)
    const signature = JSON.stringify(groups)
    if (signature !== shape.signature) shape = { signature, groups }
    return shape
  }
}
