import { useState } from "react"
import { stillFits } from "../../commands/find"
import { limitWords, missText } from "../../describe/findText"
import type { Asked, Miss } from "../../scene/find"
import { useLive } from "../../state/useBench"
import { TrySetup } from "./TrySetup"
import { useGhost } from "./useGhost"

/** Why nothing was found: each limit with how near the kit comes to it, and that setup to try. */
export function Misses({ asked, misses }: { asked: Asked; misses: readonly Miss[] }) {
  const units = useLive(({ preferences }) => preferences)
  const fits = useLive(({ scene }) => stillFits({ asked: asked.scene, mounts: asked.question.mounts }, scene))
  const [pointed, setPointed] = useState<Miss | null>(null)
  useGhost(asked, fits ? (pointed?.nearest?.setup ?? null) : null)
  return (
    <section aria-labelledby="find-misses">
      <h2 className="sheet-heading" id="find-misses">
        What stands in the way
      </h2>
      <ul className="find-misses">
        {misses.map((miss) => (
          <li
            key={miss.key}
            onPointerEnter={(event) => event.pointerType === "mouse" && setPointed(miss)}
            onPointerLeave={() => setPointed(null)}
            onFocus={() => setPointed(miss)}
            onBlur={() => setPointed(null)}
          >
            <span>{missText(miss, units)}</span>
            {miss.nearest !== null && (
              <TrySetup
                asked={asked}
                setup={miss.nearest.setup}
                name={`the nearest for ${limitWords[miss.key].name}`}
                fits={fits}
              />
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
