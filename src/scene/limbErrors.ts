import type { Rounding } from "../core/rounding"
import type { LimbFailure } from "../core/limbs"
import { limbFaults as faults } from "../words/limbFaults"
import { MM } from "./assemble/parts"
import { failure, type Result } from "./result"
import { type Amount, explained, type Words } from "./words"

const PATHS: Partial<Record<LimbFailure["quantity"], string>> = {
  braceHeight: "bow.braceHeightMm",
  drawLength: "bow.drawLengthMm",
  drawWeight: "bow.drawWeightLbf",
  stringWrap: "bow.stringWrap",
  rootForward: "bow.limbs.rootMm[0]",
  rootOut: "bow.limbs.rootMm[1]",
  length: "bow.limbs.lengthMm",
  rootAngle: "bow.limbs.rootAngleDeg",
  recurve: "bow.limbs.recurveDeg",
  recurveFrom: "bow.limbs.recurveFrom",
  stiffnessTaper: "bow.limbs.stiffnessTaper",
  massTaper: "bow.limbs.massTaper",
  mass: "bow.limbs.massG",
}

/** A limb's failure as an error of the scene, at the number to change. */
export const unsolvable = (failed: LimbFailure): Result<never> =>
  failure(explained("unsolvable", PATHS[failed.quantity] ?? "bow.limbs", limbWords(failed)))

/** Why limbs cannot take a shape, lengths apart. */
export function limbWords(failed: LimbFailure): Words {
  switch (failed.reason) {
    case "not-a-limb":
      return [NUMBERS[failed.fault]]
    case "brace-unreachable": {
      const said = failed.inFront ? faults.braceInFront<Amount> : faults.braceWithoutShape<Amount>
      const { braceHeight, nearest } = failed
      const instead = nearest === undefined ? [faults.noBrace] : faults.nearestBrace(working(nearest, braceHeight))
      return said(mm(braceHeight), instead)
    }
    case "draw-below-brace":
      return faults.drawBelowBrace(mm(failed.draw), mm(failed.braceHeight))
    case "draw-past-string":
      return faults.drawPastString(mm(failed.draw), mm(failed.straight), drawable(failed))
    case "limb-gives-way":
      return faults.givesWay(mm(failed.draw), drawable(failed))
    case "no-convergence":
      return faults.notFound(mm(failed.draw))
  }
}

const NUMBERS = {
  "not-finite": faults.notFinite,
  "not-positive": faults.notPositive,
  negative: faults.negative,
  "beyond-half-turn": faults.beyondHalfTurn,
  "recurve-past-tip": faults.recurvePastTip,
} as const

const drawable = ({ draw, nearest }: { readonly draw: number; readonly nearest?: number }): (string | Amount)[] =>
  nearest === undefined ? [faults.noDraw] : faults.mostDraw(working(nearest, draw))

const length = (metres: number, round: Rounding): Amount => ({ value: metres / MM, quantity: "length", round })
const mm = (metres: number) => length(metres, "nearest")
/** A length that works where `asked` does not, cut away from that, so that the length named does work. */
const working = (metres: number, asked: number) => length(metres, metres < asked ? "down" : "up")
