import { MM } from "../assemble"
import type { LimbPlace } from "../limbPlace"
import type { Bow, CompoundBow } from "../schema"
import { type LimbMotion, type LimbMotions, LIMBS_STILL } from "./limbMotion"
import { recurveMotions } from "./recurveMotions"

/** How the limbs in `place` answer to every number that moves them. */
export const limbMotions = (bow: Bow, place: LimbPlace): LimbMotions =>
  bow.kind === "compound" ? compoundMotions(bow, place) : recurveMotions(bow, place)

const outward = (forward: number, out: number): LimbMotion => ({
  centreForward: forward,
  centreOut: out,
  endForward: 0,
  endOut: out,
})

/** A compound's limbs are bodies that shift in a straight line; the string's ends lie at the brace height behind. */
function compoundMotions({ limbs }: CompoundBow, { drawFraction }: LimbPlace): LimbMotions {
  return {
    own: {
      "centreMm.forward": outward(MM, 0),
      "centreMm.out": outward(0, MM),
      "drawnShiftMm.forward": outward(drawFraction * MM, 0),
      "drawnShiftMm.out": outward(0, drawFraction * MM),
    },
    braceHeight: { ...LIMBS_STILL, endForward: -1 },
    drawLength: LIMBS_STILL,
    drawFraction: outward(limbs.drawnShiftMm[0] * MM, limbs.drawnShiftMm[1] * MM),
  }
}
