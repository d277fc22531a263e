import { hangFaults } from "../../words/hangFaults"
import type { Address } from "../address"
import { type Result, success } from "../errors"
import { unsolvable } from "../limbErrors"
import { type LimbPlace, placeLimbs } from "../limbPlace"
import type { PartOf, Scene } from "../schema"
import { betterHang, type Candidate, weigherOf } from "./candidate"
import { compareSlopes, type SlopeComparison } from "./compare"
import { type HangPlace, hangPlaces, withoutSwings, withSwingAt } from "./place"
import { checkedRanges, type HangRanges } from "./ranges"
import { valuesOf } from "./steps"

export interface HangQuestion {
  /** The weight to hang; its stem length and bob mass are tried, all else stays as it is, the bob's size too. */
  readonly swing: PartOf<"swing">
  /** Swing weights that are taken off first: the one being moved, or none. */
  readonly moving: readonly Address[]
  readonly ranges: HangRanges
  /** Paths of the places to try, as `placesFor` names them; all of them when left out. */
  readonly places?: readonly string[]
  /** How many answers; 5 when left out. */
  readonly count?: number
}

/** An answer: what to change in the scene, and what it does. */
export interface FlattestHang {
  /** Taken off first; addresses in the scene asked about. */
  readonly remove: readonly Address[]
  /** Hung up then; its addresses are those after the removal. */
  readonly place: HangPlace
  readonly swing: PartOf<"swing">
  /** N·m over the slopes from -30° to 30°. */
  readonly flatness: number
  /** The whole bow at full draw, g. */
  readonly massG: number
  readonly slopes: SlopeComparison
}

export interface FlattestAnswer {
  /** The flattest first; see `betterHang` for ties. */
  readonly best: readonly FlattestHang[]
  /** The best of each place, in the same order. */
  readonly bestByPlace: readonly FlattestHang[]
  /** The scene asked about, for comparison. */
  readonly now: SlopeComparison
  /** False when it was stopped: then the answers are the best of what had been tried. */
  readonly complete: boolean
  readonly progress: HangProgress
}

export interface HangProgress {
  readonly tried: number
  readonly total: number
}

const ANSWERS = 5
/** Tries between two reports: about a millisecond's work, so that a page stays smooth and a stop is prompt. */
const TRIES_IN_SLICE = 250

/** The places that a search can try once the moving weights are off. @throws RangeError as `withoutSwings`. */
export const placesFor = (scene: Scene, moving: readonly Address[]): HangPlace[] =>
  hangPlaces(withoutSwings(scene, moving))

/** The scene with an answer applied. */
export const applyHang = (scene: Scene, { remove, place, swing }: FlattestHang): Scene =>
  withSwingAt(withoutSwings(scene, remove), place, swing)

/** A search that is carried on one slice at a time. `next(true)` ends it with what it has. */
export type HangSearch = Generator<HangProgress, FlattestAnswer, boolean | undefined>

/**
 * The flattest hang: every place, stem length and bob mass is tried for the least spread of the net lift over slopes
 * from -30° to 30° at full draw. It is plain enumeration with the fixed part of the sums taken out, so the answer is
 * exact. Fails where the limbs cannot be drawn or a range is outside what a scene allows; a place that does not exist
 * is an error too.
 */
export function hangSearch(scene: Scene, question: HangQuestion): Result<HangSearch> {
  const base = withoutSwings(scene, question.moving)
  const all = hangPlaces(base)
  const unknown = question.places?.filter((path) => !all.some((place) => place.path === path)) ?? []
  if (unknown.length > 0) {
    const error = { code: "not-allowed", message: hangFaults.noPlace } as const
    return { ok: false, errors: unknown.map((path) => ({ ...error, path })) }
  }
  const places = all.filter(({ path }) => question.places?.includes(path) ?? true)
  const ranges = checkedRanges(question.ranges, places.length)
  if (!ranges.ok) return ranges
  const drawn = placeLimbs(scene.bow, 1)
  return drawn.ok ? success(search(scene, base, places, question, drawn.value)) : unsolvable(drawn)
}

/**
 * Runs a whole search, for a worker or a test. `onProgress` is called after each slice; `shouldStop` is asked then.
 */
export function flattestHang(
  scene: Scene,
  question: HangQuestion,
  onProgress: (progress: HangProgress) => void = () => {},
  shouldStop: () => boolean = () => false,
): Result<FlattestAnswer> {
  const found = hangSearch(scene, question)
  if (!found.ok) return found
  let step = found.value.next()
  while (step.done !== true) {
    onProgress(step.value)
    step = found.value.next(shouldStop())
  }
  return success(step.value)
}

function* search(
  scene: Scene,
  base: Scene,
  places: readonly HangPlace[],
  question: HangQuestion,
  drawn: LimbPlace,
): HangSearch {
  const weigherAt = weigherOf(base, drawn, question.swing)
  const stems = valuesOf(question.ranges.stemLengthMm)
  const bobs = valuesOf(question.ranges.bobMassG)
  const total = places.length * stems.length * bobs.length
  const count = question.count ?? ANSWERS
  const best: Candidate[] = []
  const bestByPlace: Candidate[] = []
  let order = 0
  let stopped = false
  tries: for (const [index, place] of places.entries()) {
    const weigh = weigherAt(place)
    for (const stemLengthMm of stems) {
      for (const bobMassG of bobs) {
        const weighed = weigh({ ...question.swing, stemLengthMm, bobMassG })
        const candidate = { place: index, stemLengthMm, bobMassG, order, ...weighed }
        keep(best, candidate, count)
        const known = bestByPlace[index]
        if (known === undefined || betterHang(candidate, known) < 0) bestByPlace[index] = candidate
        order++
        if (order % TRIES_IN_SLICE === 0 && (yield { tried: order, total }) === true) {
          stopped = order < total
          break tries
        }
      }
    }
  }
  const answer = (candidate: Candidate): FlattestHang => {
    const place = places[candidate.place]!
    const swing = { ...question.swing, stemLengthMm: candidate.stemLengthMm, bobMassG: candidate.bobMassG }
    const slopes = compareSlopes(withSwingAt(base, place, swing), drawn)
    const { flatness, massG } = candidate
    return { remove: question.moving, place, swing, flatness, massG, slopes }
  }
  return {
    best: best.map(answer),
    bestByPlace: bestByPlace.sort(betterHang).map(answer),
    now: compareSlopes(scene, drawn),
    complete: !stopped,
    progress: { tried: order, total },
  }
}

/** Puts a candidate in its place among the best `count`, if it has one there. */
function keep(best: Candidate[], candidate: Candidate, count: number): void {
  if (count < 1) return
  const last = best.at(-1)
  if (best.length >= count && last !== undefined && betterHang(candidate, last) >= 0) return
  const at = best.findIndex((known) => betterHang(candidate, known) < 0)
  best.splice(at < 0 ? best.length : at, 0, candidate)
  if (best.length > count) best.pop()
}
