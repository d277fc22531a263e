import { chainsOf } from "../scene/address"
import { mountNames } from "../scene/mountNames"
import type { Arm, Element, RigEntry, Scene } from "../scene/schema"
import type { UnitChoice } from "./format"
import { kindWords } from "./partNames"
import { short } from "./placeWords"

/** What is to be done at one place of the bow, in the order one would do it. */
export interface RigChange {
  /** "Front", "Both sides", "Left side", "Lower". */
  readonly where: string
  readonly what: readonly string[]
}

/**
 * From one rig to another as a list for the screwdriver: "Both sides: swap the rod for “long”, 305 mm; +2 discs of
 * 28 g; 5° wider, to splay 45°". Empty when they are alike; what is only named otherwise counts as alike.
 */
export function rigChanges(
  scene: Pick<Scene, "rig">,
  target: readonly RigEntry[],
  units: UnitChoice,
): readonly RigChange[] {
  const before = placesOf(scene.rig)
  const after = placesOf(target)
  const paths = [...new Set([...before.keys(), ...after.keys()])].sort(inOrder)
  const changes = paths.map((path) => ({ path, what: placeChanges(before.get(path), after.get(path), units) }))
  const joined: RigChange[] = []
  for (const { path, what } of changes) {
    if (what.length === 0) continue
    const twin = path.endsWith("/left")
      ? changes.find((other) => other.path === path.replace(/left$/, "right"))
      : undefined
    const isSecond =
      path.endsWith("/right") && sameList(what, changes.find((o) => o.path === path.replace(/right$/, "left"))?.what)
    if (isSecond) continue
    joined.push({ where: placeName(path, twin !== undefined && sameList(what, twin.what)), what })
  }
  return joined
}

/** "Both sides: +2 discs of 28 g; 5° wider, to splay 45°". */
export const rigChangeText = ({ where, what }: RigChange): string => `${where}: ${what.join("; ")}`

interface Place {
  readonly chain: readonly Element[]
  readonly arm?: Arm
}

function placesOf(rig: readonly RigEntry[]): Map<string, Place> {
  const chains = chainsOf({ rig } as Scene)
  return new Map(
    chains.map(({ path, chain, arm }) => [path, arm === undefined ? { chain } : { chain, arm: arm.value }]),
  )
}

/** Mounts as they are listed everywhere, each followed by its arms. */
const inOrder = (a: string, b: string): number => rank(a) - rank(b) || a.length - b.length || (a < b ? -1 : 1)
const rank = (path: string): number => mountNames.indexOf(path.split("/")[0] as (typeof mountNames)[number])

function placeName(path: string, both: boolean): string {
  const [mount = "", vbar, side] = path.split("/")
  if (vbar === undefined) return capital(mount)
  const words = [mount === "front" ? "" : mount, both ? "both sides" : `${side} side`]
  return capital(words.filter((word) => word !== "").join(", "))
}

function placeChanges(before: Place | undefined, after: Place | undefined, units: UnitChoice): string[] {
  const [was, is] = [before?.chain ?? [], after?.chain ?? []]
  const found = (["extender", "vbar", "rod", "damper", "swing"] as const).flatMap((part) =>
    pieceChanges(
      part,
      was.filter((element) => element.part === part),
      is.filter((element) => element.part === part),
      units,
    ),
  )
  return [...found, ...discChanges(was, is, units), ...armChanges(before?.arm, after?.arm, units)]
}

/** Pieces of one kind in a chain, the first with the first and so on. */
function pieceChanges(
  part: keyof typeof kindWords,
  was: readonly Element[],
  is: readonly Element[],
  units: UnitChoice,
): string[] {
  return Array.from({ length: Math.max(was.length, is.length) }, (_, index) => {
    const [old, fresh] = [was[index], is[index]]
    const word = kindWords[part] + (index === 0 ? "" : ` ${index + 1}`)
    if (old !== undefined && fresh !== undefined) {
      return samePiece(old, fresh) ? [] : [`swap the ${word} for ${pieceText(fresh, units)}`]
    }
    return fresh === undefined
      ? [`take off the ${word}`]
      : [`fit a${/^[aeiou]/.test(word) ? "n" : ""} ${word}: ${pieceText(fresh, units)}`]
  }).flat()
}

/** Alike in everything that has weight or place; names and what hangs on the arms apart. */
function samePiece(a: Element, b: Element): boolean {
  const bare = (element: Element) =>
    Object.entries(element)
      .filter(([key, value]) => typeof value === "number" || key === "joint")
      .filter(([key]) => !["modulusGPa", "maxEndWeightG", "stiffnessNmPerRad"].includes(key))
      .sort(([x], [y]) => (x < y ? -1 : 1))
  return JSON.stringify(bare(a)) === JSON.stringify(bare(b))
}

function pieceText(element: Element, units: UnitChoice): string {
  const name = element.label === undefined ? "" : `“${element.label}”, `
  if (element.part === "weights") return `${name}${element.count}`
  if (element.part === "swing") return `${name}stem ${short(element.stemLengthMm, "length", units)}`
  return `${name}${short(element.lengthMm, "length", units)}`
}

/** Discs of each mass, counted over the whole chain: how they are stacked is for the eye. */
function discChanges(was: readonly Element[], is: readonly Element[], units: UnitChoice): string[] {
  const counts = new Map<number, number>()
  const count = (chain: readonly Element[], sign: 1 | -1) => {
    for (const element of chain) {
      if (element.part !== "weights") continue
      counts.set(element.eachG, (counts.get(element.eachG) ?? 0) + sign * element.count)
    }
  }
  count(is, 1)
  count(was, -1)
  return [...counts]
    .filter(([, more]) => more !== 0)
    .sort(([a], [b]) => a - b)
    .map(([eachG, more]) => {
      const discs = Math.abs(more) === 1 ? "disc" : "discs"
      return `${more > 0 ? "+" : "\u2212"}${Math.abs(more)} ${discs} of ${short(eachG, "mass", units)}`
    })
}

function armChanges(was: Arm | undefined, is: Arm | undefined, units: UnitChoice): string[] {
  if (is === undefined) return was === undefined ? [] : ["take off the arm"]
  const angle = (value: number) => short(value, "angle", units)
  if (was === undefined) return [`set to splay ${angle(is.splayDeg)}, droop ${angle(is.droopDeg)}`]
  const turned = (now: number, then: number, more: string, less: string, name: string) =>
    now === then ? [] : [`${angle(Math.abs(now - then))} ${now > then ? more : less}, to ${name} ${angle(now)}`]
  return [
    ...turned(is.splayDeg, was.splayDeg, "wider", "closer", "splay"),
    ...turned(is.droopDeg, was.droopDeg, "lower", "higher", "droop"),
  ]
}

const sameList = (a: readonly string[], b: readonly string[] | undefined): boolean =>
  b !== undefined && a.length === b.length && a.every((each, index) => each === b[index])

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
