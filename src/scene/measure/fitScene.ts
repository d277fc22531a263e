import { type Fit, fitBody, type MeasuredBody, type Observation, plausible, vectorOf } from "../../core/measure"
import type { MassMoments } from "../../core/sensitivity"
import { type Result, success } from "../errors"
import { unsolvable } from "../limbErrors"
import { placeLimbs } from "../limbPlace"
import type { Measurement, Scene } from "../schema"
import { decompose } from "./decompose"
import { observationOf } from "./observed"
import { assumedBody } from "./setup"

/** What the readings of a scene say of its riser. */
export interface MeasuredFit extends Fit {
  readonly observations: readonly Observation[]
  /**
   * For each observation, the place of its reading in the scene's list; excluded ones are left out, and those whose rig
   * hung from a mount that is no more.
   */
  readonly places: readonly number[]
  /** The riser the scene has now. */
  readonly assumed: MeasuredBody
  /** Whether that is the fitted one, so that what the fit says of its errors holds for every number on the page. */
  readonly applied: boolean
}

type Asked = Pick<Scene, "bow" | "accessories" | "mounts" | "measurements">
const asked = ({ bow, accessories, mounts, measurements }: Asked): Asked => ({ bow, accessories, mounts, measurements })
let last: { readonly asked: Asked; readonly answer: Result<MeasuredFit> | null } | null = null

/**
 * The fit of a scene's readings; null where there are none that count. Fails where the limbs cannot be strung. The last
 * answer is kept for as long as nothing it depends on changes: dragging the rig does not fit again.
 */
export function fitScene(scene: Scene): Result<MeasuredFit> | null {
  const question = asked(scene)
  if (last !== null && sameMembers(last.asked, question)) return last.answer
  const answer = fitAnew(scene)
  last = { asked: question, answer }
  return answer
}

const sameMembers = (a: Asked, b: Asked): boolean =>
  (Object.keys(a) as (keyof Asked)[]).every((key) => a[key] === b[key])

function fitAnew(scene: Scene): Result<MeasuredFit> | null {
  const places = (scene.measurements ?? []).flatMap((reading, index) =>
    reading.excluded || !stillMounted(scene, reading) ? [] : [index],
  )
  if (places.length === 0) return null
  const limbs = placeLimbs(scene.bow, 0)
  if (!limbs.ok) return unsolvable(limbs)
  const assumed = assumedBody(scene)
  const observed = (body: MeasuredBody) =>
    places.map((index) => observationOf(scene, limbs.value, scene.measurements![index]!, body))
  let observations = observed(assumed)
  let fit = fitBody(observations, assumed, decompose)
  // A swing weight hangs by the riser that is looked for: with one on a swinging bow, what hangs is taken anew.
  for (let round = 1; round < MOST_ROUNDS && fit.converged; round++) {
    const again = observed(fit.body)
    if (again.every(({ rest }, i) => sameRest(rest, observations[i]!.rest))) break
    observations = again
    fit = fitBody(observations, assumed, decompose)
  }
  return success({ ...fit, observations, places, assumed, applied: fit.converged && sameBody(fit.body, assumed) })
}

/** Whether every mount of the rig that a reading was taken with is still there: else nobody knows where it was. */
export const stillMounted = ({ mounts }: Pick<Scene, "mounts">, { rig = [] }: Pick<Measurement, "rig">): boolean =>
  rig.every(({ mount }) => mounts[mount] !== undefined)

const MOST_ROUNDS = 12
/** kg·m: a gram moved by a thousandth of a millimetre. */
const SAME_REST = 1e-9

const sameRest = (a: MassMoments, b: MassMoments): boolean =>
  a.first.every((value, k) => Math.abs(value - b.first[k]!) <= SAME_REST)

/** In plausible spans: a ten-thousandth of a millimetre, a milligram. Far above rounding, far below any reading. */
const SAME = 1e-6

const sameBody = (a: MeasuredBody, b: MeasuredBody): boolean => {
  const other = vectorOf(b)
  return vectorOf(a).every((value, k) => Math.abs(value - other[k]!) <= SAME * plausible[k]!)
}

/** A fitted body in the file's units; for what is not determined, what was assumed. */
export const riserOf = ({ body }: Pick<Fit, "body">): Scene["bow"]["riser"] => {
  const [roll, yaw, pitch] = body.squares.map((square) => Math.sqrt(square) * 1e3) as [number, number, number]
  const [x, y, z] = body.centre
  return { massG: body.mass * 1e3, centreMm: [x * 1e3, y * 1e3, z * 1e3], gyrationMm: [roll, yaw, pitch] }
}
