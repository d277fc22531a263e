import { chainsOf } from "../scene/address"
import { nameCounter } from "../scene/assemble/parts"
import type { Scene } from "../scene/schema"

/** How a sentence calls what a change touches. */
export interface PlaceWords {
  /** Without an article: "front rod", or of a pair "side rod". */
  readonly one: string
  /** With its article: "the front rod", "both side rods". */
  readonly all: string
}

/**
 * Words for the part that the slot `key` belongs to: "front rod", "left side extender", "front rod (stack 2)". A stack
 * is called after the rod it hangs on, or else after its arm or mount. With `pair` the same part of both arms is meant.
 */
export function placeWords(scene: Scene, key: string, pair: boolean): PlaceWords {
  const owner = key.slice(0, key.indexOf(":"))
  const chain = chainsOf(scene).find(({ path }) => owner === path || owner.slice(0, owner.lastIndexOf("/")) === path)
  if (chain === undefined) return single(owner)
  const named = nameCounter()
  const names = chain.chain.map(({ part }) => named(part))
  const element = owner === chain.path ? "" : owner.slice(chain.path.length + 1)
  const thing = thingWords(names, element, chain.arm !== undefined)
  if (chain.arm === undefined) return single(`${chain.mount} ${thing}`)
  const where = armPrefix(chain.path)
  if (!pair) return single(`${where}${chain.arm.side} ${thing}`)
  return { one: where + thing, all: `both ${where}${several(thing)}` }
}

const single = (one: string): PlaceWords => ({ one, all: `the ${one}` })

function thingWords(names: readonly string[], element: string, onArm: boolean): string {
  const side = onArm ? "side " : ""
  const [part = "", number] = element.split("#")
  if (part === "rod" || part === "extender") return side + part + (number === undefined ? "" : ` ${number}`)
  const carrier = names.some((name) => name === "rod") ? `${side}rod` : onArm ? "arm" : "mount"
  const stacks = names.filter((name) => name.startsWith("weights"))
  if (part !== "weights" || stacks.length < 2) return carrier
  return `${carrier} (stack ${stacks.indexOf(element) + 1})`
}

/** Arms at the front need no more words; those of another mount, or of a second V-bar, say so. */
function armPrefix(path: string): string {
  const [mount = "", vbar = ""] = path.split("/")
  const number = vbar.split("#")[1]
  return `${mount === "front" ? "" : `${mount} `}${number === undefined ? "" : `V-bar ${number} `}`
}

const several = (thing: string): string => thing.replace(/(rod|extender|arm)/, "$1s")
