import { Group, MeshBasicMaterial } from "three"
import { multiply } from "../../core/solids"
import { HELD_POINT } from "../../describe/compareText"
import type { WeighedPart } from "../../scene/evaluate"
import { partsApart } from "../../state/samePart"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import { drawPart } from "../parts"
import type { PartDrawing } from "../parts/drawing"
import type { Drawn, PictureFrame } from "../picture"
import { mesh, putAt, setRotation } from "../shapes/placing"
import { unitBoxEdges } from "../shapes/solids"

/** Half the edge of the box that marks the other setup's balance point, m: of another shape than the present one's ball. */
const MARK = 0.011

/**
 * The setup beside the present one, see-through: those of its parts that are not where the present ones are, and its
 * balance point. In world axes: it turns its own parts.
 */
export function besideOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  object.matrixAutoUpdate = false
  const material = new MeshBasicMaterial({ transparent: true, opacity: 0.34, depthWrite: false })
  looks.follow("compared", (colour) => material.color.copy(colour))
  const seeThrough: Looks = {
    ...looks,
    surface: () => material,
    stroke: (_ink, width, opacity) => looks.stroke("compared", width, opacity),
  }
  const mark = mesh(unitBoxEdges, looks.stroke("compared", 2.5))
  // On its corner, as the mark in the sheet.
  mark.rotation.z = Math.PI / 4
  mark.scale.setScalar(2 * MARK)
  mark.renderOrder = 15
  object.add(mark)
  const drawings = new Map<string, PartDrawing>()

  const draw = (part: WeighedPart, frame: PictureFrame) => {
    const key = `${part.kind} ${part.path}`
    const known = drawings.get(key)
    const drawing = known ?? drawPart(part.kind, part.path, seeThrough)
    if (known === undefined) {
      drawings.set(key, drawing)
      object.add(drawing.object)
    }
    drawing.update(part, frame)
    return key
  }
  const keep = (wanted: ReadonlySet<string>) => {
    for (const [key, drawing] of drawings) {
      if (wanted.has(key)) continue
      object.remove(drawing.object)
      drawing.dispose?.()
      drawings.delete(key)
    }
  }

  return {
    object,
    update(frame) {
      const { other } = frame
      object.visible = other !== null
      if (other === null) {
        keep(new Set())
        labels.put("held-balance", null)
        return
      }
      const { evaluation } = other
      const { rotation, centre, parts } = evaluation.now
      const named = new Map(parts.map((part) => [part.path, part]))
      const differing = partsApart(evaluation.now, frame.state.evaluation.now.pose, frame.parts)
      const shown = { ...frame, evaluation, parts: named }
      keep(new Set(differing.map((part) => draw(part, shown))))
      setRotation(object.matrix, rotation)
      object.matrixWorldNeedsUpdate = true
      putAt(mark, centre)
      const wish = { text: HELD_POINT, at: multiply(rotation, centre), side: "below", look: "plain", rank: 8 } as const
      labels.put("held-balance", frame.state.preferences.show.labels ? wish : null)
    },
    dispose() {
      keep(new Set())
      labels.put("held-balance", null)
      material.dispose()
    },
  }
}
