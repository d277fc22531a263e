import { type Hold, stringStiffness } from "../../core/nudge"
import { distance } from "../../core/solids"
import { nockPoint } from "../assemble"
import type { Evaluation } from "../evaluate"

/** What holds the bow against turning: stiffness N·m/rad for each motion, and one damping for all, N·m·s/rad. */
export interface HandHold {
  readonly pitch: number
  readonly yaw: number
  readonly roll: number
  readonly damping: number
}

/** A hold by name, each bow's own where the bow matters; or one with numbers, the same for every bow. */
export type HoldChoice = "free" | "string" | "loose" | HandHold

const FREE: HandHold = { pitch: 0, yaw: 0, roll: 0, damping: 0 }
/** Assumed; no measured source. About 0.5 Hz for a bow of 0.5 kg·m², dying out within a swing or two. */
const LOOSE: HandHold = { pitch: 5, yaw: 5, roll: 2, damping: 0.5 }
/** Of a bow held by its string, N·m·s/rad: assumed, no measured source. A few swings and it is still. */
const STRING_DAMPING = 1

/** What the drawn string holds a bow with; null for a compound, whose cables and so whose string's pull are not modelled. */
export function stringHold({ scene, fullDraw }: Evaluation): HandHold | null {
  const { limbs } = fullDraw
  if (limbs.stringTension === null) return null
  const nock = nockPoint(scene.bow, limbs)
  // Ends above and below are not quite as far from a nock off the middle.
  const tipToNock = (distance(nock, limbs.stringEnds[0]) + distance(nock, limbs.stringEnds[1])) / 2
  const stiffness = stringStiffness(limbs.stringTension, limbs.draw, tipToNock)
  return { pitch: stiffness, yaw: stiffness, roll: 0, damping: STRING_DAMPING }
}

/** The numbers of a hold on a bow. A string hold where there is none is a free hand: ask `stringHold` first. */
export function heldBy(choice: HoldChoice, evaluation: Evaluation): HandHold {
  if (choice === "free") return FREE
  if (choice === "loose") return LOOSE
  if (choice === "string") return stringHold(evaluation) ?? FREE
  return choice
}

export const coreHold = ({ pitch, yaw, roll, damping }: HandHold): Hold => ({
  stiffness: [roll, yaw, pitch],
  damping: [damping, damping, damping],
})
