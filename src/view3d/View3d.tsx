import { useEffect, useId, useRef } from "react"
import type { Projector } from "../picture/projector"
import { useBench, useLive } from "../state/useBench"
import { picture3d } from "../words/picture3d"
import { startPicture } from "./start"
import "./view3d.css"

export interface View3dProps {
  /** Given once the picture stands, null when it goes. */
  onProjector(projector: Projector | null): void
  onFirstFrame(): void
  /** Says, in words to stand inside a sentence, why there is no 3D picture; show another drawing then. */
  onFailure(reason: string): void
}

/** The 3D picture of the bow. Fills its parent, which must be positioned. */
export default function View3d(props: View3dProps) {
  const bench = useBench()
  const camera = useLive((state) => state.camera)
  const host = useRef<HTMLDivElement>(null)
  const wishes = useRef(props)
  const help = useId()
  useEffect(() => {
    wishes.current = props
  })
  useEffect(() => {
    if (host.current === null) return
    return startPicture(host.current, bench, {
      onProjector: (projector) => wishes.current.onProjector(projector),
      onFirstFrame: () => wishes.current.onFirstFrame(),
      onFailure: (reason) => wishes.current.onFailure(reason),
    })
  }, [bench])
  return (
    <>
      <div
        ref={host}
        className="view3d"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys turn the view while the picture has the focus
        tabIndex={0}
        aria-label={picture3d[camera]}
        aria-describedby={help}
      />
      <span id={help} hidden>
        {picture3d.keys}
      </span>
    </>
  )
}
