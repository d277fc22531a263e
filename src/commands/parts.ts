import { kindOnMount, kindWords } from "../describe/partNames"
import { type Address, chainAt, valueAt } from "../scene/address"
import { failure, pathText, type Result } from "../scene/errors"
import type { Arm, Element, MountName, PartOf, Scene } from "../scene/schema"
import { newArm, newElement, newMount, newSideRod } from "../scene/templates"
import type { Bench, Recipe } from "../state/bench"
import { edits } from "../words/edits"
import { partWords } from "../words/partWords"
import type { Command } from "./command"

/** The refusal of an address that names nothing. */
export const nowhere = (address: Address): Result<never> =>
  failure({ code: "not-allowed", path: pathText(address), message: edits.nowhere })

/** Adds a part to a chain, before the element at `index` or, without one, at its end. */
export const addPart: Command<{ chain: Address; part: Element["part"]; index?: number }> = {
  id: "add-part",
  run(bench, { chain, part, index }) {
    if (chainAt(bench.store.getState().scene, chain) === undefined) return nowhere(chain)
    const onArm = chain.at(-2) === "left" || chain.at(-2) === "right"
    const fresh: Element = part === "rod" && onArm ? { ...newSideRod } : { ...newElement[part] }
    return bench.change(edits.added(kindWords[part]), (draft) => {
      const list = chainAt(draft as Scene, chain)
      list?.splice(index ?? list.length, 0, fresh)
    })
  },
}

/** Puts a first, empty chain on a mount, making the mount where the bow has none. */
export const addChain: Command<{ mount: MountName; part: Element["part"] }> = {
  id: "add-chain",
  run(bench, { mount, part }) {
    return bench.change(edits.added(kindOnMount(mount, part)), (draft) => {
      draft.mounts[mount] ??= structuredClone(newMount[mount]) as (typeof draft.mounts)[typeof mount]
      const entry = draft.rig.find((candidate) => candidate.mount === mount)
      if (entry === undefined) draft.rig.push({ mount, chain: [{ ...newElement[part] }] })
      else entry.chain.push({ ...newElement[part] })
    })
  },
}

/** Removes the element, accessory or arm at an address. */
export const removeItem: Command<{ address: Address; name: string }> = {
  id: "remove-item",
  run(bench, { address, name }) {
    if (valueAt(bench.store.getState().scene, address) === undefined) return nowhere(address)
    return bench.change(edits.removed(name), remove(address))
  },
}

/** Moves an element or accessory by `by` places in its list; at the end of the list nothing happens. */
export const moveItem: Command<{ address: Address; by: number; name: string }> = {
  id: "move-item",
  run(bench, { address, by, name }) {
    if (!isListed(bench.store.getState().scene, address)) return nowhere(address)
    return bench.change(edits.moved(name), (draft) => {
      const [list, from] = place(draft, address)
      const to = from + by
      if (to < 0 || to >= list.length) return
      const [item] = list.splice(from, 1)
      list.splice(to, 0, item)
    })
  },
}

/** Puts a copy of an element or accessory after it. */
export const duplicateItem: Command<{ address: Address; name: string }> = {
  id: "duplicate-item",
  run(bench, { address, name }) {
    const { scene } = bench.store.getState()
    if (!isListed(scene, address)) return nowhere(address)
    const found = valueAt(scene, address)
    return bench.change(edits.duplicated(name), (draft) => {
      const [list, index] = place(draft, address)
      list.splice(index + 1, 0, structuredClone(found))
    })
  },
}

/** Gives a rig part its own label, or an accessory its name. Empty takes a part's label away. */
export const renameItem: Command<{ address: Address; name: string }> = {
  id: "rename-item",
  run(bench, { address, name }) {
    const text = name.trim()
    if (!isListed(bench.store.getState().scene, address)) return nowhere(address)
    return bench.change(edits.renamed, (draft) => {
      const item = valueAt(draft as Scene, address) as { name?: string; label?: string; part?: string } | undefined
      if (item === undefined) return
      if (item.part === undefined) item.name = text
      else if (text === "") delete item.label
      else item.label = text
    })
  },
}

/** Gives a V-bar an arm on a side that has none: like the other arm where there is one. */
export const addArm: Command<{ vbar: Address; side: "left" | "right" }> = {
  id: "add-arm",
  run(bench, { vbar, side }) {
    const other = side === "left" ? "right" : "left"
    const { scene } = bench.store.getState()
    const bar = valueAt(scene, vbar) as Partial<Element> | undefined
    if (bar?.part !== "vbar") return nowhere(vbar)
    if (bar[side] !== undefined) {
      return failure({ code: "not-allowed", path: pathText([...vbar, side]), message: edits.armThere })
    }
    const model = bar[other]
    return bench.change(edits.added(partWords.armTitle(partWords.sides[side])), (draft) => {
      const bare = valueAt(draft as Scene, vbar) as Partial<Record<typeof side, Arm>>
      bare[side] = model === undefined ? newArm() : structuredClone(model)
    })
  },
}

/** Whether an address names an entry that stands in a list: an element or an accessory, not an arm. */
const isListed = (scene: Scene, address: Address): boolean =>
  Array.isArray(valueAt(scene, address.slice(0, -1))) && valueAt(scene, address) !== undefined

/** A list and the index an address names in it. */
function place(draft: object, address: Address): [unknown[], number] {
  return [valueAt(draft as Scene, address.slice(0, -1)) as unknown[], address.at(-1) as number]
}

function remove(address: Address): Recipe {
  return (draft) => {
    const last = address.at(-1)
    const owner = valueAt(draft as Scene, address.slice(0, -1))
    if (Array.isArray(owner)) owner.splice(last as number, 1)
    else delete (owner as Record<string, unknown>)[last as string]
    // A mount whose chain is empty carries nothing: its entry goes too.
    if (address.length === 4 && address[0] === "rig" && (owner as unknown[]).length === 0) {
      draft.rig.splice(address[1] as number, 1)
    }
  }
}

/** Whether a chain has an extender, and where: the picture's add-or-remove toggle. */
export const extenderIn = (chain: readonly Element[]): number =>
  chain.findIndex((element) => element.part === "extender")

/** Adds an extender at the root of a chain, or takes the first one away. */
export const toggleExtender: Command<{ chain: Address }> = {
  id: "toggle-extender",
  run(bench: Bench, { chain }) {
    const list = chainAt(bench.store.getState().scene, chain)
    if (list === undefined) return nowhere(chain)
    const at = extenderIn(list)
    return at < 0
      ? addPart.run(bench, { chain, part: "extender", index: 0 })
      : removeItem.run(bench, { address: [...chain, at], name: kindWords.extender })
  },
}

/** How a swing weight hangs: turning only in the bow's plane, or every way. */
export const setJoint: Command<{ address: Address; joint: PartOf<"swing">["joint"] }> = {
  id: "set-joint",
  run(bench, { address, joint }) {
    const found = valueAt(bench.store.getState().scene, address) as Partial<Element> | undefined
    if (found?.part !== "swing") return nowhere(address)
    return bench.change(edits.swing[joint], (draft) => {
      const swing = valueAt(draft as Scene, address) as PartOf<"swing">
      swing.joint = joint
    })
  },
}
