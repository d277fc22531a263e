import { type ChainPlace, chainsOf } from "../scene/address"
import { nameCounter } from "../scene/assemble/parts"
import type { Scene } from "../scene/schema"
import { suggestion as words } from "../words/suggestion"

/** How a sentence calls what a change touches. */
export interface PlaceWords {
  /** "the front rod", or of a pair "both side rods". */
  readonly all: string
  /** "the front rod", or of a pair "each side rod". */
  readonly each: string
  /** On an arm, whichever side: "side rod". */
  readonly one: string
}

/**
 * Words for the part that the slot `key` belongs to: "the front rod", "the left side extender", "the front rod (stack
 * 2)". A stack is called after the rod it hangs on, or else after its arm or mount. With `pair` the same part of both
 * arms is meant.
 */
export function placeWords(scene: Scene, key: string, pair: boolean): PlaceWords {
  const owner = key.slice(0, key.indexOf(":"))
  const place = chainsOf(scene).find(({ path }) => owner === path || owner.slice(0, owner.lastIndexOf("/")) === path)
  if (place === undefined) return single(owner)
  const { path, mount, arm } = place
  const { kind, numbered } = thingOf(place, owner === path ? "" : owner.slice(path.length + 1))
  if (arm === undefined) return single(numbered(words[kind][mount]))
  const where = armWhere(place)
  const said = (which: "left" | "right" | "both" | "each" | "one") => numbered(words[kind][which](where))
  return { ...(pair ? { all: said("both"), each: said("each") } : single(said(arm.side))), one: said("one") }
}

const single = (all: string): PlaceWords => ({ all, each: all, one: all })

interface Thing {
  readonly kind: "rod" | "extender" | "bare"
  /** Tells it from others of its kind in the chain. */
  readonly numbered: (thing: string) => string
}

/** What stands at `element` of a chain, or carries it. */
function thingOf({ chain }: ChainPlace, element: string): Thing {
  const counted = nameCounter()
  const names = chain.map(({ part }) => counted(part))
  const [part = "", number] = element.split("#")
  if (part === "rod" || part === "extender")
    return { kind: part, numbered: (thing) => (number === undefined ? thing : words.numbered(thing, number)) }
  const stacks = names.filter((name) => name.startsWith("weights"))
  const several = part === "weights" && stacks.length > 1
  return {
    kind: names.includes("rod") ? "rod" : "bare",
    numbered: (thing) => (several ? words.stack(thing, stacks.indexOf(element) + 1) : thing),
  }
}

/** Arms at the front need no more words; those of another mount, or of a second V-bar, say so. */
function armWhere({ path, mount }: ChainPlace): string {
  const number = path.split("/")[1]?.split("#")[1]
  if (number !== undefined) return words.onVbar[mount](number)
  return mount === "front" ? "" : words.on[mount]
}
