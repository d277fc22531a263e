import type { SceneError } from "../scene/errors"
import type { FindTarget, Miss, Outcome, Progress, ScoreName } from "../scene/find"
import type { Element, RigEntry } from "../scene/schema"
import { said, type Shown, type UnitChoice } from "./format"
import { kindWords } from "./partNames"
import { short } from "./placeWords"
import { targetWords } from "./suggestions"

/** What each way of ranking puts first. */
export const scoreWords: Readonly<Record<ScoreName, string>> = {
  nearest: "nearest to the middle of the targets",
  lightest: "lightest",
  steadiest: "most turn resistance",
  steadyForMass: "most turn resistance for its mass",
}

/** What each limit of a search is called in a sentence, and what it measures. */
export const limitWords: Readonly<Record<keyof FindTarget, { readonly name: string; readonly quantity: Shown }>> = {
  ...targetWords,
  reachForwardMm: { name: "how far the rig reaches forward", quantity: "length" },
  reachSideMm: { name: "how far the rig reaches to a side", quantity: "length" },
  pitchLeast: { name: "pitch resistance", quantity: "inertia" },
  yawLeast: { name: "yaw resistance", quantity: "inertia" },
  rollLeast: { name: "roll resistance", quantity: "inertia" },
}

/** "256,017,408", and beyond fifteen digits in powers of ten: a count of combinations. */
export const countText = (count: number): string => {
  if (count < 1e15) return count.toLocaleString("en")
  const power = Math.floor(Math.log10(count))
  return `${(count / 10 ** power).toFixed(1)} × 10^${power}`
}

/** How much of the search is done, in one sentence; the end of it says whether the list is proved. */
export function coverText(
  { combinations, covered }: Pick<Progress, "combinations" | "covered">,
  end: "proved" | "stopped" | null,
): string {
  const all = countText(combinations)
  if (end === "proved") return `All ${all} combinations are covered: this list is proved.`
  const share = `${combinations > 0 ? ((100 * covered) / combinations).toFixed(covered < combinations ? 1 : 0) : 0}\u00a0%`
  return end === null
    ? `${share} of ${all} combinations covered.`
    : `Stopped with ${share} of ${all} combinations covered: the best so far, not proved.`
}

/** What of a search's asking is no longer what stands on the page. */
export type Changed = { readonly [K in "bow" | "kit" | "question"]: boolean }

/** "the earlier kit and question": what a list belongs to that the present page has left behind; null when nothing. */
export function earlierText(changed: Changed): string | null {
  const names = (["bow", "kit", "question"] as const).filter((each) => changed[each])
  const [first, ...more] = names
  if (first === undefined) return null
  return `the earlier ${more.length === 0 ? first : `${[first, ...more.slice(0, -1)].join(", ")} and ${more.at(-1)}`}`
}

/** That workers were lost, and that nothing is lost by it; null when none was. */
export function lostText(reasons: readonly string[]): string | null {
  if (reasons.length === 0) return null
  const why = [...new Set(reasons)].join("; ")
  return reasons.length === 1
    ? `A worker of this search was lost (${why}); another does its part again.`
    : `${reasons.length} workers of this search were lost (${why}); others do their parts again.`
}

/** That the page stood still during a search, and that the search goes on; null when it did not. */
export function sleptText(ms: number): string | null {
  if (ms <= 0) return null
  const seconds = Math.max(1, Math.round(ms / 1000))
  const time = seconds < 90 ? `${seconds}\u00a0s` : `${Math.round(seconds / 60)}\u00a0min`
  return `The page was asleep for ${time}; the search goes on from where it was.`
}

/**
 * What came of a search that ended, in a sentence or two. `earlier` is what it belongs to when that is not what is
 * asked now: nothing is proved for the present then.
 */
export function outcomeText(outcome: Extract<Outcome, { kind: "searched" }>, earlier: string | null = null): string {
  if (earlier !== null) {
    const { combinations, covered, setups } = outcome
    const list = setups.length > 0 ? "This list belongs" : "This answer belongs"
    const then = outcome.proved
      ? `all ${countText(combinations)} combinations were covered then`
      : `${coverText({ combinations, covered }, null).replace(/ covered\.$/, "")} were covered then`
    return `${list} to ${earlier}: ${then}. It proves nothing for what is asked now; search again.`
  }
  const cover = coverText(outcome, outcome.proved ? "proved" : "stopped")
  const trouble = outcome.trouble === null ? "" : `The search broke off (${outcome.trouble}). `
  if (outcome.setups.length > 0) return trouble + cover
  if (!outcome.proved) return `${trouble}Nothing found yet. ${cover}`
  return `No setup from this kit meets every limit; all ${countText(outcome.combinations)} combinations are covered.`
}

/** Why a search could not be begun, in one or more sentences. */
export const refusalText = (errors: readonly SceneError[]): string =>
  errors.map(({ message }) => `${capital(message)}.`).join(" ")

/** Why a band cannot be searched for, or null: its ends are the wrong way round. */
export function bandProblem(
  key: keyof FindTarget,
  [from, to]: readonly [number, number],
  units: UnitChoice,
): string | null {
  if (from <= to) return null
  const { name, quantity } = limitWords[key]
  return `${capital(name)}: from ${said(from, quantity, units)} to ${said(to, quantity, units)} is no band; “to” must not be less than “from”.`
}

/** Why the search does not begin while fields hold what cannot be taken. */
export function wrongFieldsText(names: readonly string[]): string {
  const [first, ...more] = names.map((name) => `“${capital(name)}”`)
  const all = more.length === 0 ? first : `${[first, ...more.slice(0, -1)].join(", ")} and ${more.at(-1)}`
  return `Not searched: ${all} cannot be taken as ${more.length === 0 ? "it stands" : "they stand"}. Correct ${more.length === 0 ? "it" : "them"} first.`
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

export const RECHECK = "Recheck every thread after a change."

/** How far a setup's figures are to be trusted. */
export const ACCURACY =
  "The figures are as good as the masses and lengths entered: they are worked out, not measured. Check the balance on the bow."

export const CUT_OFF =
  "The last search was cut off when the page was closed or put to sleep. The kit and what was wanted are kept: search again."

/** What is known of one limit when nothing meets them all. */
export function missText({ key, nearest, alone }: Miss, units: UnitChoice): string {
  const { name, quantity } = limitWords[key]
  const value = (number: number) => said(number, quantity, units)
  const title = capital(name)
  if (alone === null) return `${title}: there is nothing to build.`
  if (alone.by > 0)
    return `${title}: out of reach of this kit; the nearest is ${value(alone.value)}, ${value(alone.by)} off.`
  if (nearest === null) return `${title}: can be met by itself; the other limits cannot all be met together.`
  if (nearest.by > 0) {
    return `${title}: binds; with the other limits kept the nearest is ${value(nearest.value)}, ${value(nearest.by)} off.`
  }
  return `${title}: is met.`
}

/** What a rig is made of, mount by mount: "Front: extender 100, V-bar (40°/5°: side rod 254, 3 × 28 g), …". */
export function rigText(rig: readonly RigEntry[], units: UnitChoice): string {
  if (rig.length === 0) return "nothing on the bow"
  return rig.map(({ mount, chain }) => `${capital(mount)}: ${chainText(chain, units)}`).join(". ")
}

const chainText = (chain: readonly Element[], units: UnitChoice): string =>
  chain.length === 0 ? "nothing" : chain.map((element) => elementText(element, units)).join(", ")

function elementText(element: Element, units: UnitChoice): string {
  const name = element.label ?? kindWords[element.part]
  if (element.part === "weights") return `${element.count} × ${element.label ?? short(element.eachG, "mass", units)}`
  if (element.part !== "vbar") return name
  const sides = (["left", "right"] as const).flatMap((side) => {
    const arm = element[side]
    if (arm === undefined) return []
    const angles = `${short(arm.splayDeg, "angle", units)}/${short(arm.droopDeg, "angle", units)}`
    return [{ side, text: `${angles}: ${chainText(arm.chain, units)}` }]
  })
  const [first, second] = sides
  if (first === undefined) return name
  if (second === undefined) return `${name} (${first.side} ${first.text})`
  if (first.text === second.text) return `${name} (both ${first.text})`
  return `${name} (left ${first.text}; right ${second.text})`
}
