import { Group, MeshStandardMaterial } from "three"
import type { Evaluation } from "../../scene/evaluate"
import type { Looks } from "../looks"
import { drawPart } from "../parts"
import type { PartDrawing } from "../parts/drawing"
import type { Drawn, PictureFrame } from "../picture"
import { setRotation } from "../shapes/placing"

/** The rig of another setup, seen through the present one. In bow axes. */
export function comparedOverlay(looks: Looks): Drawn {
  const object = new Group()
  object.matrixAutoUpdate = false
  const material = new MeshStandardMaterial({ transparent: true, opacity: 0.62, depthWrite: false, roughness: 0.7 })
  looks.follow("compared", (colour) => {
    material.color.copy(colour)
    material.emissive.copy(colour).multiplyScalar(0.35)
  })
  const alike: Looks = { ...looks, surface: () => material }
  let shown: Evaluation | null = null
  let drawings: PartDrawing[] = []
  const clear = () => {
    object.clear()
    for (const drawing of drawings) drawing.dispose?.()
    drawings = []
  }
  return {
    object,
    update(frame: PictureFrame) {
      const { compared } = frame.state
      if (compared === shown) return
      shown = compared
      clear()
      if (compared === null) return
      const seen = { ...frame, evaluation: compared }
      for (const part of compared.now.parts) {
        if (part.address[0] !== "rig") continue
        const drawing = drawPart(part.kind, part.path, alike)
        drawing.update(part, seen)
        drawings.push(drawing)
        object.add(drawing.object)
      }
      setRotation(object.matrix, compared.now.rotation)
      object.matrixWorldNeedsUpdate = true
    },
    dispose() {
      clear()
      material.dispose()
    },
  }
}
