import type { SceneError } from "../scene/errors"
import type { FindTarget, Miss, Outcome, Progress, ScoreName } from "../scene/find"
import type { Element, RigEntry } from "../scene/schema"
import { locale } from "../words/language"
import { search } from "../words/search"
import { fixed, said, type Shown, type UnitChoice, withUnit } from "./format"
import { kindWords } from "./partNames"
import { short } from "./placeWords"
import { targetWords } from "./suggestions"

/** What each way of ranking puts first. */
export const scoreWords: Readonly<Record<ScoreName, string>> = search.best

/** What each limit of a search is called in a sentence, and what it measures. */
export const limitWords: Readonly<Record<keyof FindTarget, { readonly name: string; readonly quantity: Shown }>> = {
  ...targetWords,
  reachForwardMm: { name: search.limits.reachForward, quantity: "length" },
  reachSideMm: { name: search.limits.reachSide, quantity: "length" },
  pitchLeast: { name: search.limits.pitch, quantity: "inertia" },
  yawLeast: { name: search.limits.yaw, quantity: "inertia" },
  rollLeast: { name: search.limits.roll, quantity: "inertia" },
}

/** "256,017,408", and beyond fifteen digits in powers of ten: a count of combinations. */
export const countText = (count: number): string => {
  if (count < 1e15) return count.toLocaleString(locale)
  const power = Math.floor(Math.log10(count))
  return `${fixed(count / 10 ** power, 1)} × 10^${power}`
}

type Covered = Pick<Progress, "combinations" | "covered">

/** "42.5 %": how much of the combinations is covered; a whole number only when that is all of them. */
function shareText({ combinations, covered }: Covered): string {
  const percent = combinations > 0 ? fixed((100 * covered) / combinations, covered < combinations ? 1 : 0) : "0"
  return withUnit(percent, "%")
}

/** How much of the search is done, in one sentence; the end of it says whether the list is proved. */
export function coverText(progress: Covered, end: "proved" | "stopped" | null): string {
  const all = countText(progress.combinations)
  if (end === "proved") return search.covered.proved(all)
  const share = shareText(progress)
  return end === null ? search.covered.underway(share, all) : search.covered.stopped(share, all)
}

/** What of a search's asking is no longer what stands on the page. */
export type Changed = { readonly [K in "bow" | "kit" | "question"]: boolean }

/** "the earlier kit and question": what a list belongs to that the present page has left behind; null when nothing. */
export function earlierText(changed: Changed): string | null {
  const names = (["bow", "kit", "question"] as const).filter((each) => changed[each])
  return names.length === 0 ? null : search.earlier.one(listed(names.map((each) => search.earlier[each])))
}

/** That workers were lost, and that nothing is lost by it; null when none was. */
export function lostText(reasons: readonly string[]): string | null {
  if (reasons.length === 0) return null
  const why = [...new Set(reasons)].join(search.between)
  return reasons.length === 1 ? search.lostOne(why) : search.lostSome(reasons.length, why)
}

/** That the page stood still during a search, and that the search goes on; null when it did not. */
export function sleptText(ms: number): string | null {
  if (ms <= 0) return null
  const seconds = Math.max(1, Math.round(ms / 1000))
  return search.slept(seconds < 90 ? withUnit(`${seconds}`, "s") : withUnit(`${Math.round(seconds / 60)}`, "min"))
}

/**
 * What came of a search that ended, in a sentence or two. `earlier` is what it belongs to when that is not what is
 * asked now: nothing is proved for the present then.
 */
export function outcomeText(outcome: Extract<Outcome, { kind: "searched" }>, earlier: string | null = null): string {
  const all = countText(outcome.combinations)
  const any = outcome.setups.length > 0
  if (earlier !== null) {
    const { coveredThen, partlyCoveredThen, list, answer } = search.earlier
    const then = outcome.proved ? coveredThen(all) : partlyCoveredThen(shareText(outcome), all)
    return any ? list(earlier, then) : answer(earlier, then)
  }
  const cover = coverText(outcome, outcome.proved ? "proved" : "stopped")
  if (!any && outcome.proved) return search.outcome.none(all)
  const trouble = outcome.trouble === null ? [] : [search.outcome.brokeOff(outcome.trouble)]
  return [...trouble, ...(any ? [] : [search.outcome.nothingYet]), cover].join(" ")
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
  return search.noBand(capital(name), said(from, quantity, units), said(to, quantity, units))
}

/** Why the search does not begin while fields hold what cannot be taken. */
export function wrongFieldsText(names: readonly string[]): string {
  const all = listed(names.map((name) => search.quoted(capital(name))))
  return names.length === 1 ? search.wrongField(all) : search.wrongFields(all)
}

/** "bow, kit and question". */
function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? ""
  return names.length < 2 ? last : search.and(names.slice(0, -1).join(", "), last)
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

export const RECHECK = search.recheck

/** How far a setup's figures are to be trusted. */
export const ACCURACY = search.accuracy

/** What is known of one limit when nothing meets them all. */
export function missText({ key, nearest, alone }: Miss, units: UnitChoice): string {
  const { name, quantity } = limitWords[key]
  const value = (number: number) => said(number, quantity, units)
  const title = capital(name)
  const { missed } = search
  if (alone === null) return missed.nothing(title)
  if (alone.by > 0) return missed.outOfReach(title, value(alone.value), value(alone.by))
  if (nearest === null) return missed.alone(title)
  return nearest.by > 0 ? missed.binds(title, value(nearest.value), value(nearest.by)) : missed.met(title)
}

/** What a rig is made of, mount by mount: "Front: extender 100, V-bar (40°/5°: side rod 254, 3 × 28 g), …". */
export function rigText(rig: readonly RigEntry[], units: UnitChoice): string {
  if (rig.length === 0) return search.rig.bare
  return rig.map(({ mount, chain }) => search.rig[mount](chainText(chain, units))).join(". ")
}

const chainText = (chain: readonly Element[], units: UnitChoice): string =>
  chain.length === 0 ? search.rig.nothing : chain.map((element) => elementText(element, units)).join(", ")

function elementText(element: Element, units: UnitChoice): string {
  const name = element.label ?? kindWords[element.part]
  if (element.part === "weights") return `${element.count} × ${element.label ?? short(element.eachG, "mass", units)}`
  if (element.part !== "vbar") return name
  const sides = (["left", "right"] as const).flatMap((side) => {
    const arm = element[side]
    if (arm === undefined) return []
    const angles = `${short(arm.splayDeg, "angle", units)}/${short(arm.droopDeg, "angle", units)}`
    return [{ side, text: search.rig.arm(angles, chainText(arm.chain, units)) }]
  })
  const [first, second] = sides
  if (first === undefined) return name
  if (second === undefined) return search.rig[first.side](name, first.text)
  if (first.text === second.text) return search.rig.alike(name, first.text)
  return search.rig.unlike(name, first.text, second.text)
}
