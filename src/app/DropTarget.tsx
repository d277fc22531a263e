import { useEffect, useState } from "react"
import { acceptDrops } from "../files/dropZone"
import { useBench } from "../state/useBench"
import "./dropTarget.css"

/** Takes scene files dropped anywhere on the page and says so while one hangs over it. */
export function DropTarget() {
  const bench = useBench()
  const [hanging, setHanging] = useState(false)
  useEffect(() => acceptDrops(bench, setHanging), [bench])
  return hanging ? <div className="drop-target">Drop the scene file to open it</div> : null
}
