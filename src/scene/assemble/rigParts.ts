import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { armDirection, mountDirection, type Side } from "../../core/rig"
import { along, tube, type Vec3 } from "../../core/solids"
import { type SwingWeight, swingRest, swingSolids } from "../../core/swing"
import type { PathStep } from "../errors"
import type { Element, PartOf, Scene } from "../schema"
import { type ArmLine, type Axis, GRAM, metres, MM, nameCounter, type Part } from "./parts"

/**
 * Every part of the rig, from the mounts outward, in the order of the file. `gravity` is its unit direction in
 * bow axes: only the swing weights ask for it.
 */
export function rigParts(scene: Scene, gravity: Vec3): Part[] {
  return scene.rig.flatMap(({ mount, chain }, index) => {
    const at = scene.mounts[mount]
    // A chain without its mount is refused when the scene is read.
    if (at === undefined) return []
    const direction = mountDirection(at.pitchDeg * DEGREE, at.yawDeg * DEGREE)
    return chainParts(chain, metres(at.atMm), direction, mount, ["rig", index, "chain"], gravity)
  })
}

/** A chain from `start` outward along the unit `direction`, m; paths begin with `prefix`. */
export function chainParts(
  chain: readonly Element[],
  start: Vec3,
  direction: Vec3,
  prefix: string,
  address: readonly PathStep[],
  gravity: Vec3,
): Part[] {
  const named = nameCounter()
  const parts: Part[] = []
  let end = start
  chain.forEach((element, index) => {
    const path = `${prefix}/${named(element.part)}`
    const here = [...address, index]
    if (element.part === "swing") {
      parts.push(swingPart(element, end, path, here, gravity))
      return
    }
    const axis = elementAxis(element, end, direction)
    const mass = elementMassG(element) * GRAM
    const solid = tube(mass, axis.start, direction, axis.length, axis.outerRadius, axis.innerRadius)
    const base = { path, kind: element.part, address: here, solids: [solid], axis }
    if (element.part === "vbar") parts.push(...vbarParts(element, base, gravity))
    else parts.push(base)
    end = along(end, direction, axis.length)
  })
  return parts
}

/** Mass of an element without what hangs on it, g. */
export const elementMassG = (element: Exclude<Element, { part: "swing" }>): number =>
  element.part === "weights" ? element.count * element.eachG : element.massG

/** How much an element lengthens its chain, mm. */
export function elementLengthMm(element: Element): number {
  if (element.part === "swing") return 0
  return element.part === "weights" ? element.count * element.thicknessMm : element.lengthMm
}

function elementAxis(element: Exclude<Element, { part: "swing" }>, start: Vec3, direction: Vec3): Axis {
  return {
    start,
    direction,
    length: elementLengthMm(element) * MM,
    outerRadius: (element.outerMm * MM) / 2,
    innerRadius: "innerMm" in element ? (element.innerMm * MM) / 2 : 0,
  }
}

function vbarParts(element: PartOf<"vbar">, base: Part & { axis: Axis }, gravity: Vec3): Part[] {
  const { axis, path, address } = base
  const middle = along(axis.start, axis.direction, axis.length / 2)
  const arms: Partial<Record<Side, ArmLine>> = {}
  const hung: Part[] = []
  for (const side of ["left", "right"] as const) {
    const arm = element[side]
    if (arm === undefined) continue
    const direction = armDirection(arm.splayDeg * DEGREE, arm.droopDeg * DEGREE, side)
    const start = along(middle, direction, element.armOffsetMm * MM)
    arms[side] = { start, direction }
    hung.push(...chainParts(arm.chain, start, direction, `${path}/${side}`, [...address, side, "chain"], gravity))
  }
  return [{ ...base, arms }, ...hung]
}

function swingPart(
  element: PartOf<"swing">,
  hinge: Vec3,
  path: string,
  address: readonly PathStep[],
  gravity: Vec3,
): Part {
  const weight = swingWeight(element)
  const rest = swingRest(gravity, weight.joint, weight.stop)
  return {
    path,
    kind: "swing",
    address,
    solids: swingSolids(weight, hinge, rest.direction),
    hung: { weight, hinge, rest },
  }
}

/** A swing element of the file in SI. */
export const swingWeight = (element: PartOf<"swing">): SwingWeight => ({
  stemLength: element.stemLengthMm * MM,
  stemMass: element.stemMassG * GRAM,
  bobMass: element.bobMassG * GRAM,
  bobRadius: (element.bobOuterMm * MM) / 2,
  bobLength: element.bobLengthMm * MM,
  joint: element.joint,
  stop: element.stopDeg * DEGREE,
})
