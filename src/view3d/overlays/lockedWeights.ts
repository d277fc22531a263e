import { Group, type Mesh } from "three"
import { along, multiply, type Vec3 } from "../../core/solids"
import { LOCKED, motionLabel } from "../../describe/hillWords"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import type { Drawn, PictureFrame } from "../picture"
import { layAlong, mesh, setRotation } from "../shapes/placing"
import { strokeGeometry } from "../shapes/solids"

type Stroke = Parameters<typeof strokeGeometry>[0][number]

/** Dashes of a line of length 1 along x. */
const dashes = (count: number, y = 0, z = 0): Stroke[] =>
  Array.from({ length: count }, (_, index) => {
    const at = (part: number) => [(index + part) / count, y, z] as const
    return [at(0), at(0.55)] as const
  })

const RIM = 32
/** Dashes of a circle of radius 1 about x. */
const rim = (x: number): Stroke[] =>
  Array.from({ length: RIM / 2 }, (_, index) => {
    const at = (step: number) => {
      const angle = (2 * Math.PI * step) / RIM
      return [x, Math.cos(angle), Math.sin(angle)] as const
    }
    return [at(2 * index), at(2 * index + 1)] as const
  })

/**
 * While a motion is played: where each swing weight would be if it were locked in its joint, as a dashed outline, and
 * that what is shown is a motion. In bow axes, turned with the bow.
 */
export function lockedWeightsOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  object.matrixAutoUpdate = false
  const ink = looks.stroke("ink", 1.8, 1)
  const stemShape = strokeGeometry(dashes(9))
  const sides = [0, 1, 2, 3].flatMap((quarter) => {
    const angle = (quarter * Math.PI) / 2
    return dashes(3, Math.cos(angle), Math.sin(angle))
  })
  const bobShape = strokeGeometry([...rim(0), ...rim(1), ...sides])
  const ghosts: { readonly stem: Mesh; readonly bob: Mesh }[] = []
  const ghost = (index: number) => {
    const known = ghosts[index]
    if (known !== undefined) return known
    const fresh = { stem: mesh(stemShape, ink), bob: mesh(bobShape, ink) }
    ghosts.push(fresh)
    object.add(fresh.stem, fresh.bob)
    return fresh
  }
  const unsay = () => {
    labels.put("locked-weight", null)
    labels.put("motion", null)
  }

  const update = ({ state, evaluation: { now }, played, parts }: PictureFrame) => {
    object.visible = played !== null
    if (played === null) {
      unsay()
      return
    }
    setRotation(object.matrix, now.rotation)
    object.matrixWorldNeedsUpdate = true
    const { labels: words } = state.preferences.show
    let shown = 0
    for (const { path, direction } of played.locked) {
      const hung = parts.get(path)?.hung
      if (hung === undefined) continue
      const { hinge, weight } = hung
      const { stem, bob } = ghost(shown)
      layAlong(stem, hinge, direction, weight.stemLength)
      layAlong(
        bob,
        along(hinge, direction, weight.stemLength - weight.bobLength),
        direction,
        weight.bobLength,
        weight.bobRadius,
      )
      if (shown === 0) {
        const at: Vec3 = multiply(now.rotation, along(hinge, direction, weight.stemLength))
        labels.put("locked-weight", words ? { text: LOCKED, at, side: "right", look: "turn", rank: 7 } : null)
      }
      shown++
    }
    ghosts.forEach(({ stem, bob }, index) => {
      stem.visible = bob.visible = index < shown
    })
    const text = motionLabel(now.pose.slopeDeg)
    labels.put("motion", words ? { text, at: [0, 0, 0], side: "left", look: "turn", rank: 9 } : null)
  }

  return {
    object,
    update,
    dispose() {
      unsay()
      stemShape.dispose()
      bobShape.dispose()
    },
  }
}
