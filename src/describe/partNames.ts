import { chainsOf } from "../scene/address"
import { nameCounter } from "../scene/assemble/parts"
import { mountNames } from "../scene/mountNames"
import type { Element, MountName, Scene } from "../scene/schema"
import type { Slot } from "../scene/slots"
import { partWords as words } from "../words/partWords"

/** What a kind of rig part is called, in the middle of a sentence. */
export const kindWords: Readonly<Record<Element["part"], string>> = words.kinds

/** Where a mount is, in the middle of a sentence: "front". */
export const mountWords: Readonly<Record<MountName, string>> = words.mounts

/** A mount by itself: "Front mount". */
export const mountTitle = (mount: MountName): string => words.mountTitles[mount]

/** A part by its mount, in the middle of a sentence: "front rod". */
export const kindOnMount = (mount: MountName, part: Element["part"]): string =>
  words.onMount(words.mounts[mount], words.kinds[part])

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
  for (const mount of mountNames) names.set(`mounts/${mount}`, same(mountTitle(mount)))
  const accessory = nameCounter()
  for (const { name } of scene.accessories) {
    const path = accessory(name)
    names.set(`accessories/${path}`, same(path.replace(/#(\d+)$/, " $1")))
  }
  for (const place of chainsOf(scene)) {
    const { path, mount, arm } = place
    const onArm = arm === undefined ? null : armWords(path, mount, arm.side)
    if (arm !== undefined && onArm !== null) {
      const short = capital(words.armTitle(words.sides[arm.side]))
      names.set(path, { title: capital(words.armTitle(onArm)), short })
    }
    const named = nameCounter()
    for (const element of place.chain) {
      const name = named(element.part)
      const number = name.split("#")[1]
      const kind = words.kinds[element.part] + (number === undefined ? "" : ` ${number}`)
      const title = onArm === null ? words.onMount(words.mounts[mount], kind) : words.onArm(onArm, kind)
      names.set(`${path}/${name}`, { title: element.label ?? capital(title), short: element.label ?? capital(kind) })
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
function armWords(path: string, mount: MountName, side: "left" | "right"): string {
  const number = path.split("/")[1]?.split("#")[1]
  return words.arm(
    words.sides[side],
    mount === "front" ? "" : words.mounts[mount],
    number === undefined ? "" : `${words.kinds.vbar} ${number}`,
  )
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const same = (title: string): PartName => ({ title, short: title })

const BOW_NAMES: readonly (readonly [string, PartName])[] = [
  ["bow", same(words.bow)],
  ["bow/riser", same(words.riser)],
  ["bow/limbs", same(words.limbs)],
  ["bow/string", same(words.string)],
  ["bow/arrow", same(words.arrow)],
  ["archer", same(words.archer)],
  ["target", same(words.target)],
  ["pose", same(words.pose)],
]
