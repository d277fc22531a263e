import { Group, InstancedMesh, Matrix4 } from "three"
import { along, type Vec3 } from "../../core/solids"
import { elementFields } from "../../scene/fields"
import type { PartOf } from "../../scene/schema"
import { valueAt } from "../../scene/address"
import type { Look, Looks } from "../looks"
import { layAlong, layBetween, mesh } from "../shapes/placing"
import { unitDamper, unitDisc, unitSphere, unitTube } from "../shapes/solids"
import type { PartDrawing } from "./drawing"

/** Metal ends of a tube as drawn: how long, and how much thicker than the tube, m. */
const END = { length: 0.012, proud: 0.0008 }

/** A rod or extender: the tube between two metal ends. */
export function tubePart(looks: Looks, look: Look): PartDrawing {
  const object = new Group()
  const body = mesh(unitTube, looks.surface(look))
  const root = mesh(unitTube, looks.surface("metal"))
  const tip = mesh(unitTube, looks.surface("metal"))
  object.add(body, root, tip)
  return {
    object,
    update({ axis }) {
      if (axis === undefined) return
      const { start, direction, length, outerRadius } = axis
      const end = Math.min(END.length, length / 4)
      layAlong(body, start, direction, length, outerRadius)
      layAlong(root, start, direction, end, outerRadius + END.proud)
      layAlong(tip, along(start, direction, length - end), direction, end, outerRadius + END.proud)
    },
  }
}

export function damperPart(looks: Looks): PartDrawing {
  const object = new Group()
  const rubber = mesh(unitDamper, looks.surface("rubber"))
  const plates = [mesh(unitTube, looks.surface("metal")), mesh(unitTube, looks.surface("metal"))]
  object.add(rubber, ...plates)
  return {
    object,
    update({ axis }) {
      if (axis === undefined) return
      const { start, direction, length, outerRadius } = axis
      const plate = length * 0.12
      layAlong(rubber, start, direction, length, outerRadius)
      layAlong(plates[0]!, start, direction, plate, outerRadius * 0.8)
      layAlong(plates[1]!, along(start, direction, length - plate), direction, plate, outerRadius * 0.8)
    },
  }
}

/** Every disc of a stack for itself; the most a stack may have are made at once and only its count are drawn. */
export function weightsPart(looks: Looks): PartDrawing {
  const discs = new InstancedMesh(unitDisc, looks.surface("weight"), elementFields.weights.count.max)
  discs.frustumCulled = false
  const place = new Matrix4()
  let laid = 0
  return {
    object: discs,
    update({ axis, address }, { evaluation }) {
      if (axis === undefined) return
      const element = valueAt(evaluation.scene, address) as PartOf<"weights">
      const thickness = element.thicknessMm * 1e-3
      layAlong(discs, axis.start, axis.direction, thickness, axis.outerRadius)
      // In the stack's own measure each disc is 1 long, so their places never change.
      for (; laid < element.count; laid++) {
        discs.setMatrixAt(laid, place.makeTranslation(laid, 0, 0))
        discs.instanceMatrix.needsUpdate = true
      }
      if (discs.count === element.count && discs.boundingSphere !== null) return
      discs.count = element.count
      // In the stack's own measure: others only with another count.
      discs.boundingSphere = null
      discs.boundingBox = null
    },
    dispose: () => discs.dispose(),
  }
}

/** The block in the chain, a hub across it, and a stub to where each arm begins. */
export function vbarPart(looks: Looks): PartDrawing {
  const object = new Group()
  const block = mesh(unitTube, looks.surface("riser"))
  const collar = mesh(unitTube, looks.surface("metal"))
  const stubs = { left: mesh(unitTube, looks.surface("metal")), right: mesh(unitTube, looks.surface("metal")) }
  object.add(block, collar, stubs.left, stubs.right)
  return {
    object,
    update({ axis, arms }) {
      if (axis === undefined) return
      const { start, direction, length, outerRadius } = axis
      const middle = along(start, direction, length / 2)
      layAlong(block, start, direction, length, outerRadius)
      layAlong(collar, along(start, direction, length * 0.42), direction, length * 0.16, outerRadius * 1.06)
      for (const side of ["left", "right"] as const) {
        const arm = arms?.[side]
        if (arm === undefined) stubs[side].visible = false
        else layBetween(stubs[side], middle, arm.start, outerRadius * 0.5)
      }
    },
  }
}

/** Hinge (a pin across the bow) or ball, stem and bob, where they rest. */
export function swingPart(looks: Looks): PartDrawing {
  const object = new Group()
  const pin = mesh(unitTube, looks.surface("metal"))
  const ball = mesh(unitSphere, looks.surface("metal"))
  const stem = mesh(unitTube, looks.surface("tube"))
  const bob = mesh(unitDisc, looks.surface("weight"))
  object.add(pin, ball, stem, bob)
  return {
    object,
    update({ hung }) {
      if (hung === undefined) return
      const { weight, hinge, rest } = hung
      pin.visible = weight.joint === "hinge"
      ball.visible = !pin.visible
      layAlong(pin, [hinge[0], hinge[1], hinge[2] - 0.012], [0, 0, 1], 0.024, 0.0055)
      layAlong(ball, hinge, [1, 0, 0], 0.009, 0.009)
      layAlong(stem, hinge, rest.direction, weight.stemLength, 0.0028)
      const top: Vec3 = along(hinge, rest.direction, weight.stemLength - weight.bobLength)
      layAlong(bob, top, rest.direction, weight.bobLength, weight.bobRadius)
    },
  }
}
