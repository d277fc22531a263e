import { chainsOf } from "../scene/address"
import { mountNames } from "../scene/mountNames"
import type { Arm, Element, MountName, RigEntry, Scene } from "../scene/schema"
import { rigSteps as words } from "../words/rigSteps"
import type { UnitChoice } from "./format"
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
export const rigChangeText = ({ where, what }: RigChange): string => words.line(where, ...what)

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
  const [name, vbar, arm] = path.split("/")
  const mount = words.mounts[name as MountName]
  if (vbar === undefined) return mount
  const side = both ? "both" : (arm as "left" | "right")
  return name === "front" ? words.sides[side] : words.sidesOf[side](mount)
}

function placeChanges(before: Place | undefined, after: Place | undefined, units: UnitChoice): string[] {
  const [was, is] = [before?.chain ?? [], after?.chain ?? []]
  const found = PIECES.flatMap((part) =>
    pieceChanges(
      part,
      was.filter((element) => element.part === part),
      is.filter((element) => element.part === part),
      units,
    ),
  )
  return [...found, ...discChanges(was, is, units), ...armChanges(before?.arm, after?.arm, units)]
}

/** Kinds of piece, discs apart, in the order one would fit them. */
const PIECES = ["extender", "vbar", "rod", "damper", "swing"] as const

/** Pieces of one kind in a chain, the first with the first and so on. */
function pieceChanges(
  part: (typeof PIECES)[number],
  was: readonly Element[],
  is: readonly Element[],
  units: UnitChoice,
): string[] {
  return Array.from({ length: Math.max(was.length, is.length) }, (_, index) => {
    const [old, fresh] = [was[index], is[index]]
    const number = index === 0 ? "" : ` ${index + 1}`
    const { put, swap, off } = words[part]
    if (fresh === undefined) return [off(number)]
    if (old === undefined) return [put(number, pieceText(fresh, units))]
    return samePiece(old, fresh) ? [] : [swap(number, pieceText(fresh, units))]
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
  const size = sizeText(element, units)
  return element.label === undefined ? size : words.named(element.label, size)
}

function sizeText(element: Element, units: UnitChoice): string {
  if (element.part === "weights") return String(element.count)
  if (element.part === "swing") return words.stem(short(element.stemLengthMm, "length", units))
  return short(element.lengthMm, "length", units)
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
    .map(([eachG, more]) => (more > 0 ? words.more : words.fewer)(Math.abs(more), short(eachG, "mass", units)))
}

function armChanges(was: Arm | undefined, is: Arm | undefined, units: UnitChoice): string[] {
  if (is === undefined) return was === undefined ? [] : [words.armOff]
  const angle = (value: number) => short(value, "angle", units)
  if (was === undefined) return [words.armSet(angle(is.splayDeg), angle(is.droopDeg))]
  const turned = (now: number, then: number, more: typeof words.wider, less: typeof words.closer) =>
    now === then ? [] : [(now > then ? more : less)(angle(Math.abs(now - then)), angle(now))]
  return [
    ...turned(is.splayDeg, was.splayDeg, words.wider, words.closer),
    ...turned(is.droopDeg, was.droopDeg, words.lower, words.higher),
  ]
}

const sameList = (a: readonly string[], b: readonly string[] | undefined): boolean =>
  b !== undefined && a.length === b.length && a.every((each, index) => each === b[index])
