import { useFrame, useThree } from "@react-three/fiber"
import { useEffect, useRef } from "react"
import type { Projector } from "../picture/projector"
import { createProjector, type LiveProjector } from "./camera/projector"
import type { Card } from "./card"
import { type Box, handleBoxes } from "./labels"
import { usePicture } from "./picture"

/**
 * Puts words and card over their places, after the camera has moved and before each frame is drawn. The handles over
 * the picture follow it with the next screen frame: words are put again then, off the handles, without drawing.
 */
export function usePlacing(host: HTMLElement, card: Card, onProjector: (projector: Projector | null) => void): void {
  const picture = usePicture()
  const camera = useThree((state) => state.camera)
  const get = useThree((state) => state.get)
  const placing = useRef<Placing | null>(null)

  useEffect(() => picture.watch(card.update), [picture, card])
  useEffect(() => {
    let request = 0
    let handles: readonly Box[] = []
    const place = () => {
      const { width, height } = get().size
      picture.labels.place(projector, width, height, handles)
    }
    const settle = () => {
      request = 0
      const now = handleBoxes(host)
      if (same(now, handles)) return
      handles = now
      place()
    }
    const settleSoon = () => {
      if (request === 0) request = requestAnimationFrame(settle)
    }
    const projector = createProjector(camera, () => requestAnimationFrame(settleSoon))
    placing.current = {
      projector,
      frame() {
        const { width, height } = get().size
        picture.looks.pixels.set(width, height)
        projector.refresh(width, height)
        place()
        card.place(projector, width, height)
        settleSoon()
      },
      announced: false,
    }
    get().invalidate()
    return () => {
      cancelAnimationFrame(request)
      placing.current = null
      onProjector(null)
    }
  }, [picture, camera, get, host, card, onProjector])

  useFrame(() => {
    const now = placing.current
    if (now === null) return
    now.frame()
    if (now.announced) return
    now.announced = true
    onProjector(now.projector)
  })
}

interface Placing {
  readonly projector: LiveProjector
  frame(): void
  /** The first frame has been told of. */
  announced: boolean
}

const same = (a: readonly Box[], b: readonly Box[]): boolean =>
  a.length === b.length &&
  a.every(({ left, top, right, bottom }, index) => {
    const other = b[index]!
    return left === other.left && top === other.top && right === other.right && bottom === other.bottom
  })
