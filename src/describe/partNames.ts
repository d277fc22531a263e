import { chainsOf } from "../scene/address"
import { nameCounter } from "../scene/assemble/parts"
import { mountNames } from "../scene/mountNames"
import type { Element, Scene } from "../scene/schema"
import type { Slot } from "../scene/slots"

/** What a kind of rig part is called, in the middle of a sentence. */
export const kindWords: Readonly<Record<Element["part"], string>> = {
  extender: "extender",
  rod: "rod",
  damper: "damper",
  weights: "weights",
  vbar: "V-bar",
  swing: "swing weight",
}

/** What one thing with numbers is called. */
export interface PartName {
  /** By itself: "Left side rod", or the label it was given. */
  readonly title: string
  /** Under a heading that says where it is: "Rod", or the label it was given. */
  readonly short: string
}

const cache = new WeakMap<Scene, ReadonlyMap<string, PartName>>()

/** Names of everything that owns numbers, by part path or slot owner: parts, arms, mounts, bow, archer, target, pose. */
export function partNames(scene: Scene): ReadonlyMap<string, PartName> {
  const known = cache.get(scene)
  if (known !== undefined) return known
  const names = new Map<string, PartName>(BOW_NAMES)
  for (const mount of mountNames) names.set(`mounts/${mount}`, same(`${capital(mount)} mount`))
  const accessory = nameCounter()
  for (const { name } of scene.accessories) {
    const path = accessory(name)
    names.set(`accessories/${path}`, same(path.replace(/#(\d+)$/, " $1")))
  }
  for (const place of chainsOf(scene)) {
    const where = place.arm === undefined ? place.mount : `${armWords(place.path)} side`
    if (place.arm !== undefined)
      names.set(place.path, { title: capital(`${armWords(place.path)} arm`), short: `${capital(place.arm.side)} arm` })
    const named = nameCounter()
    for (const element of place.chain) {
      const name = named(element.part)
      const number = name.split("#")[1]
      const kind = kindWords[element.part] + (number === undefined ? "" : ` ${number}`)
      const title = element.label ?? capital(`${where} ${kind}`)
      names.set(`${place.path}/${name}`, { title, short: element.label ?? capital(kind) })
    }
  }
  cache.set(scene, names)
  return names
}

/** The full name of the part or slot owner at `path`; the path itself where the scene has none. */
export const partTitle = (scene: Scene, path: string): string => partNames(scene).get(path)?.title ?? path

/** "Left side rod, length": one number of the scene, in a field's title, the history and announcements. */
export const slotTitle = (scene: Scene, { owner, label }: Pick<Slot, "owner" | "label">): string =>
  `${partTitle(scene, owner)}, ${label}`

/** "left"; "back left" off the front mount; "V-bar 2 left" on a second V-bar. */
function armWords(path: string): string {
  const [mount = "", vbar = "", side = ""] = path.split("/")
  const number = vbar.split("#")[1]
  const words = [mount === "front" ? "" : mount, number === undefined ? "" : `V-bar ${number}`, side]
  return words.filter((word) => word !== "").join(" ")
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const same = (title: string): PartName => ({ title, short: title })

const BOW_NAMES: readonly (readonly [string, PartName])[] = [
  ["bow", same("Bow")],
  ["bow/riser", same("Riser")],
  ["bow/limbs", same("Limbs")],
  ["bow/string", same("String")],
  ["bow/arrow", same("Arrow")],
  ["archer", same("Archer")],
  ["target", same("Target")],
  ["pose", same("Pose")],
]
