import { box, gyrating, pointSolid, type Solid, slender, type Vec3 } from "../../core/solids"
import type { LimbPlace } from "../limbPlace"
import type { Bow, Scene } from "../schema"
import { GRAM, metres, MM, nameCounter, type Part } from "./parts"

/** The bow without accessories and rig: riser, limbs, string and, once drawn, the arrow. */
export function bowParts(bow: Bow, limbs: LimbPlace): Part[] {
  const parts: Part[] = [
    {
      path: "bow/riser",
      kind: "riser",
      address: ["bow", "riser"],
      solids: [gyrating(bow.riser.massG * GRAM, metres(bow.riser.centreMm), metres(bow.riser.gyrationMm))],
    },
    { path: "bow/limbs", kind: "limbs", address: ["bow", "limbs"], solids: limbs.solids },
    { path: "bow/string", kind: "string", address: ["bow", "string"], solids: stringSolids(bow, limbs) },
  ]
  if (limbs.drawFraction > 0) {
    const nock = nockPoint(bow, limbs)
    const point: Vec3 = [nock[0] + bow.arrow.lengthMm * MM, nock[1], nock[2]]
    const solids = [slender(bow.arrow.massG * GRAM, nock, point)]
    parts.push({ path: "bow/arrow", kind: "arrow", address: ["bow", "arrow"], solids })
  }
  return parts
}

/** Where the string is held: behind the grip by the draw, at the nock's height. Bow axes, m. */
export const nockPoint = (bow: Bow, limbs: LimbPlace): Vec3 => [-limbs.draw, bow.nockHeightMm * MM, 0]

/** The string from end to end, through the nock once it is drawn: upper end, (nock,) lower end. Bow axes, m. */
export function stringLine(bow: Bow, limbs: LimbPlace): Vec3[] {
  const [upper, lower] = limbs.stringEnds
  return limbs.drawFraction > 0 ? [upper, nockPoint(bow, limbs), lower] : [upper, lower]
}

/** The string as straight pieces, each with its length's share of the mass; one without length is a point mass. */
export function stringSolids(bow: Bow, limbs: LimbPlace): Solid[] {
  const mass = bow.string.massG * GRAM
  const line = stringLine(bow, limbs)
  const lengths = line.slice(1).map((point, index) => Math.hypot(...difference(point, line[index]!)))
  const total = lengths.reduce((sum, length) => sum + length, 0)
  const share = (length: number) => (total > 0 ? length / total : 1 / lengths.length)
  return lengths.map((length, index) => slender(mass * share(length), line[index]!, line[index + 1]!))
}

const difference = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]

/** What is fixed to the bow besides the rig. No size: a point. */
export function accessoryParts(accessories: Scene["accessories"]): Part[] {
  const named = nameCounter()
  return accessories.map((accessory, index) => {
    const mass = accessory.massG * GRAM
    const centre = metres(accessory.centreMm)
    const solid = accessory.sizeMm ? box(mass, centre, metres(accessory.sizeMm)) : pointSolid(mass, centre)
    return {
      path: `accessories/${named(accessory.name)}`,
      kind: "accessory" as const,
      address: ["accessories", index],
      solids: [solid],
    }
  })
}
