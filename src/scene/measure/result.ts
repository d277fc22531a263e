import {
  doubtsOf,
  type FittedRow,
  type Known,
  type Observation,
  OUTLIER,
  type Unknown,
  unknowns,
} from "../../core/measure"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { type Result, success } from "../errors"
import { type Evaluation, evaluate } from "../evaluate"
import type { Measurement, Scene } from "../schema"
import { decompose } from "./decompose"
import { fitScene, type MeasuredFit, riserOf } from "./fitScene"
import { figureSpreads, type Spreads } from "./spread"

/** How far one number that was read is from what the fit says it should have been, in the unit it was read in. */
export interface Miss {
  readonly what: "mass" | "slope" | "tilt" | "ahead" | "aside" | "time"
  /** g, degrees, mm or s; read less fitted. */
  readonly by: number
  /** What the reading's own errors allow, one standard deviation, same unit. */
  readonly error: number
  /** `by` over its own standard deviation in the fit; null where no other reading checks this one. */
  readonly studentised: number | null
  /** A mistake smaller than this would usually pass unseen, same unit; null where no other reading checks this one. */
  readonly unseen: number | null
}

export interface ReadingResult {
  /** Place in the scene's list. */
  readonly place: number
  readonly reading: Measurement
  readonly misses: readonly Miss[]
  /** Whether the others agree once it is left out, where they do not with it. Of several only one need be wrong. */
  readonly suspect: boolean
  /**
   * What limbs, string and rig on the scale weigh as they are entered, g, where the reading is not above it: no riser
   * then explains it, whatever the others say. Else null.
   */
  readonly outweighedByG: number | null
}

export interface MeasureResult {
  readonly fit: MeasuredFit
  /** The fitted riser, in the file's units. */
  readonly riser: Scene["bow"]["riser"]
  readonly known: Readonly<Record<Unknown, Known>>
  /** The scene with that riser. */
  readonly evaluation: Evaluation
  /** ± at 95 % of that scene's numbers, by the report's key. */
  readonly spreads: Spreads
  readonly readings: readonly ReadingResult[]
  /** Whether the readings disagree more than their errors allow; without a suspect more than one must be wrong. */
  readonly doubtful: boolean
}

/**
 * All that the readings of a scene say, for the page and the report; null where none count. Fails where the limbs cannot
 * be strung; a fit that did not come to rest has the scene as it is and no ±.
 */
export function measureResult(scene: Scene): Result<MeasureResult> | null {
  const fitted = fitScene(scene)
  if (fitted === null || !fitted.ok) return fitted
  const fit = fitted.value
  const riser = fit.converged ? riserOf(fit) : scene.bow.riser
  const evaluated = evaluate({ ...scene, bow: { ...scene.bow, riser } })
  if (!evaluated.ok) return evaluated
  const { doubtful, suspects } = doubtsOf(fit, fit.observations, fit.assumed, decompose)
  return success({
    fit,
    doubtful,
    riser,
    known: Object.fromEntries(unknowns.map((name, k) => [name, fit.known[k]])) as Record<Unknown, Known>,
    evaluation: evaluated.value,
    spreads: fit.converged ? figureSpreads(evaluated.value, fit) : {},
    readings: fit.places.map((place, of): ReadingResult => {
      const reading = scene.measurements![place]!
      const misses = fit.rows.filter((row) => row.of === of).map((row) => missOf(row, reading))
      return {
        place,
        reading,
        misses,
        suspect: suspects.includes(of),
        outweighedByG: outweighing(fit.observations[of]!),
      }
    }),
  })
}

function outweighing(seen: Observation): number | null {
  return seen.kind === "scale" && seen.mass <= seen.rest.mass ? seen.rest.mass * 1e3 : null
}

/** Hung lower than this below the point a plumb line is read as a tilt; nearer, its misses are said as distances, m. */
const READ_AS_TILT = 0.03

function missOf(row: FittedRow, reading: Measurement): Miss {
  const { residual, error, studentised, free, below = 0 } = row
  const miss = (what: Miss["what"], factor: number): Miss => ({
    what,
    by: residual * factor,
    error: error * Math.abs(factor),
    studentised,
    unseen: studentised === null ? null : (OUTLIER * error * Math.abs(factor)) / Math.sqrt(free),
  })
  switch (row.what) {
    case "mass":
      return miss("mass", 1e3)
    case "period":
      return miss("time", "count" in reading ? reading.count : 1)
    // A bow seen with its front too high has the balance point ahead of the plumb line, and so reads less than none.
    case "forward":
      return Math.abs(below) < READ_AS_TILT ? miss("ahead", -1e3) : miss("slope", -1 / (below * DEGREE))
    case "side":
      return Math.abs(below) < READ_AS_TILT ? miss("aside", -1e3) : miss("tilt", 1 / (below * DEGREE))
  }
}
