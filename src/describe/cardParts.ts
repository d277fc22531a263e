import { type ChainPlace, chainsOf } from "../scene/address"
import { nameCounter } from "../scene/assemble/parts"
import type { Evaluation, WeighedPart } from "../scene/evaluate"
import type { Element, Scene } from "../scene/schema"
import { setupCard as words } from "../words/setupCard"
import { fixed, shownUnit, type UnitChoice } from "./format"
import { mountTitle, mountWords, partNames } from "./partNames"
import { aboveWords, aheadWords, short, sideWords } from "./placeWords"

/** One part of the rig on the setup card. */
export interface CardRow {
  /** Its number in list and drawing; the same for both of a pair. */
  readonly number: number
  readonly name: string
  /** What is to be set or chosen: "254 mm", "6 × 28 g", "stem 110 mm, hinge". */
  readonly setting: string
  /** "62 g", "2 × 62 g" for a pair. */
  readonly mass: string
  /** Where its near end is, from the grip: ahead, up and right in the chosen unit; "±" for a pair. */
  readonly screw: readonly [ahead: string, up: string, right: string] | null
  readonly paths: readonly string[]
}

export interface CardGroup {
  readonly key: string
  /** "Front mount, 42 mm ahead, 72 mm below", "Both side arms: splay 40°, droop 10°". */
  readonly title: string
  readonly rows: readonly CardRow[]
}

/** The rig as a list for the person with the screwdriver: mount by mount, inside out, a pair of like arms once. */
export function cardParts({ scene, now }: Evaluation, units: UnitChoice): readonly CardGroup[] {
  const parts = new Map(now.parts.map((part) => [part.path, part]))
  const names = partNames(scene)
  const places = chainsOf(scene)
  const groups: CardGroup[] = []
  let number = 0
  for (const place of places) {
    const twin = twinOf(place, places)
    const paired = twin !== undefined && alike(place, twin)
    if (paired && place.arm?.side === "right") continue
    const paths = elementPaths(place)
    const twins = paired ? elementPaths(twin) : null
    const rows = place.chain.map((element, index): CardRow => {
      const path = paths[index]!
      number++
      return {
        number,
        name: names.get(path)?.short ?? path,
        setting: settingText(element, units),
        mass: (twins === null ? "" : "2 × ") + short(massOf(parts.get(path)), "mass", units),
        screw: screwText(parts.get(path), twins !== null, units),
        paths: twins === null ? [path] : [path, twins[index]!],
      }
    })
    groups.push({ key: place.path, title: groupTitle(scene, place, paired, units), rows })
  }
  return groups
}

const massOf = (part: WeighedPart | undefined): number => (part?.mass ?? 0) * 1e3

function twinOf(place: ChainPlace, places: readonly ChainPlace[]): ChainPlace | undefined {
  if (place.arm === undefined) return undefined
  const path = place.path.replace(/(left|right)$/, (side) => (side === "left" ? "right" : "left"))
  return places.find((other) => other.path === path)
}

const alike = (a: ChainPlace, b: ChainPlace): boolean => JSON.stringify(a.arm?.value) === JSON.stringify(b.arm?.value)

function elementPaths({ path, chain }: ChainPlace): string[] {
  const named = nameCounter()
  return chain.map(({ part }) => `${path}/${named(part)}`)
}

function groupTitle(scene: Scene, { path, mount, arm }: ChainPlace, paired: boolean, units: UnitChoice): string {
  if (arm !== undefined) {
    const { splayDeg, droopDeg } = arm.value
    const [splay, droop] = [short(splayDeg, "angle", units), short(droopDeg, "angle", units)]
    if (!paired) return words.arm(partNames(scene).get(path)?.title ?? path, splay, droop)
    return mount === "front" ? words.bothArms(splay, droop) : words.bothArmsOn(mountWords[mount], splay, droop)
  }
  const title = mountTitle(mount)
  const at = scene.mounts[mount]
  if (at === undefined) return title
  const [ahead, up, side] = at.atMm
  const turned = [
    at.pitchDeg === 0 ? "" : words.pitch(short(at.pitchDeg, "angle", units)),
    at.yawDeg === 0 ? "" : words.yaw(short(at.yawDeg, "angle", units)),
  ]
  const place = [title, aheadWords(ahead, units), aboveWords(up, units), side === 0 ? "" : sideWords(side, units)]
  return [...place, ...turned].filter((word) => word !== "").join(", ")
}

function settingText(element: Element, units: UnitChoice): string {
  switch (element.part) {
    case "weights":
      return `${element.count} × ${short(element.eachG, "mass", units)}`
    case "swing":
      return words[element.joint](short(element.stemLengthMm, "length", units), short(element.stopDeg, "angle", units))
    default:
      return short(element.lengthMm, "length", units)
  }
}

function screwText(part: WeighedPart | undefined, pair: boolean, units: UnitChoice): CardRow["screw"] {
  const at = part?.axis?.start ?? part?.hung?.hinge
  if (at === undefined) return null
  const { factor, decimals } = shownUnit("length", units)
  // Whole millimetres or tenths of an inch: nobody screws finer.
  const text = (metres: number) => fixed(metres * 1e3 * factor, decimals - 1)
  const right = text(pair ? Math.abs(at[2]) : at[2])
  return [text(at[0]), text(at[1]), pair && right !== text(0) ? `±${right}` : right]
}
