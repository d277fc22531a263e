import { useFrame, useThree } from "@react-three/fiber"
import { useEffect, useRef } from "react"
import { buttonsBox, figuresPlace } from "../picture/figuresPlace"
import type { Box, Projector } from "../picture/projector"
import { createProjector, type LiveProjector } from "./camera/projector"
import type { Card } from "./card"
import { usePicture } from "./picture"

/**
 * Puts words and card over their places, after the camera has moved and before each frame is drawn. The handles over
 * the picture follow every change of the state in the same screen frame and say where they are: words are put then,
 * off the handles.
 */
export function usePlacing(card: Card, onProjector: (projector: Projector | null) => void): void {
  const picture = usePicture()
  const camera = useThree((state) => state.camera)
  const get = useThree((state) => state.get)
  const placing = useRef<Placing | null>(null)

  useEffect(() => picture.watch(card.update), [picture, card])
  useEffect(() => {
    let handles: readonly Box[] | null = null
    const place = () => {
      const { width, height } = get().size
      // While a motion is played the handles are out of sight.
      const knobs = picture.frame().played === null ? (handles ?? []) : []
      const figures = figuresPlace(width, !picture.figuresOver()).box
      picture.labels.place(projector, width, height, [
        ...knobs,
        ...(figures === null ? [] : [figures]),
        buttonsBox(height),
      ])
    }
    const projector: LiveProjector = {
      ...createProjector(camera),
      occupy(boxes) {
        handles = boxes
        place()
      },
    }
    placing.current = {
      projector,
      frame() {
        const { width, height } = get().size
        picture.looks.pixels.set(width, height)
        const moved = projector.refresh(width, height)
        if (moved || handles === null || picture.labels.waiting()) place()
      },
      announced: false,
    }
    get().invalidate()
    return () => {
      placing.current = null
      onProjector(null)
    }
  }, [picture, camera, get, onProjector])

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
