import { useMemo, useState } from "react"
import { partTitle } from "../../describe/partNames"
import { swingMotions } from "../../scene/hills"
import { useLive } from "../../state/useBench"
import { hills } from "../../words/hills"
import type { SaveTable } from "./HillsSheet"
import { type Mover, Moving } from "./Moving"

const words = hills.motion

/** The swing weights while the bow is raised or lowered. */
export function Motion({ onSave }: { onSave: SaveTable }) {
  const scene = useLive((state) => state.scene)
  const motions = useMemo(() => swingMotions(scene), [scene])
  const [path, setPath] = useState("")
  const titled = motions.map((motion) => ({ ...motion, title: partTitle(scene, motion.path) }))
  const movers = titled.filter((motion): motion is Mover => motion.model !== null)
  const still = titled.filter(({ model }) => model === null)
  const chosen = movers.find((mover) => mover.path === path) ?? movers[0]
  if (motions.length === 0) return null
  return (
    <section>
      <h2 className="sheet-heading">{movers.length > 1 ? words.headingOfSeveral : words.heading}</h2>
      {movers.length > 1 && (
        <label className="hills-pick">
          <span>{words.closeUp}</span>
          <select value={chosen?.path} onChange={(event) => setPath(event.target.value)}>
            {movers.map(({ path: each, title }, index) => (
              <option key={each} value={each}>
                {words.listed(index + 1, title)}
              </option>
            ))}
          </select>
        </label>
      )}
      {still.map(({ path: each, title }) => (
        <p key={each} className="hills-note">
          {words.still(title)}
        </p>
      ))}
      {chosen !== undefined && (
        <Moving
          // Other weights, or the same ones changed, start afresh.
          key={JSON.stringify([scene.pose.cantDeg, ...movers.map(({ path: each, model }) => [each, model])])}
          movers={movers}
          chosen={movers.indexOf(chosen)}
          startDeg={scene.pose.slopeDeg}
          onSave={onSave}
        />
      )}
    </section>
  )
}
