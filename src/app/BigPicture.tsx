import { useEffect, useState } from "react"
import { FlatView } from "../viewflat/FlatView"

/** The window that the drawing's words and lines are made for; on a larger one they grow with it. */
const MADE_FOR = { width: 1280, height: 720 }

const scaleNow = () => Math.max(1, Math.min(innerWidth / MADE_FOR.width, innerHeight / MADE_FOR.height))

/** The flat drawing for a projector: as much of a large screen as of a small one, words and all. */
export function BigPicture() {
  const [scale, setScale] = useState(scaleNow)
  useEffect(() => {
    const resized = () => setScale(scaleNow())
    window.addEventListener("resize", resized)
    return () => window.removeEventListener("resize", resized)
  }, [])
  const share = `${100 / scale}%`
  return (
    <div
      style={{
        position: "absolute",
        width: share,
        height: share,
        transform: `scale(${scale})`,
        transformOrigin: "0 0",
      }}
    >
      <FlatView onProjector={NOBODY} bare />
    </div>
  )
}

/** Nothing is to be placed over this drawing. */
const NOBODY = () => undefined
