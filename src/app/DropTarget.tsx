import { useEffect, useState } from "react"
import { acceptDrops } from "../files/dropZone"
import { useBench } from "../state/useBench"
import { page } from "../words/page"
import "./dropTarget.css"
import { withLater } from "./later"

/** Takes scene files dropped anywhere on the page and says so while one hangs over it. */
export function DropTarget() {
  const bench = useBench()
  const [hanging, setHanging] = useState(false)
  useEffect(() => acceptDrops(setHanging, (file) => withLater(bench, ({ openFile }) => openFile(bench, file))), [bench])
  return hanging ? <div className="drop-target">{page.drop}</div> : null
}
