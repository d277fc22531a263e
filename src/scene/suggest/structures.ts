import { type ChainPlace, chainsOf } from "../address"
import type { Element, PartOf, Scene } from "../schema"
import { newElement } from "../templates"
import type { ChainEdit } from "./change"
import { costs } from "./cost"
import { EXTENDER_STEP, LONGEST_EXTENDER, MOST_DISCS, SHORTEST_EXTENDER } from "./settings"
import type { TargetKey } from "./targets"

export type StructureKind = "addExtender" | "removeExtender" | "addStack" | "removeStack"

/** A part put in or taken out, on one chain or on both arms of a V-bar alike, in one or more sizes. */
export interface Structure {
  readonly kind: StructureKind
  /** Sizes it comes in, 1 … `sizes`, growing. */
  readonly sizes: number
  /** What to do for a size. */
  edits(size: number): ChainEdit[]
  /** In discs, as `costOf`. */
  cost(size: number): number
}

/**
 * The parts that may serve a target. A chain gets an extender at its root where it has none, or loses the one it has;
 * a rod or damper that ends a chain gets a stack of discs; a stack too large to be taken off disc by disc goes as one.
 * Both arms of a V-bar change together, and only where that leaves them alike; only for the target to the side does one
 * arm alone get a stack.
 */
export function structuresFor(target: TargetKey, scene: Scene): Structure[] {
  const disc = discLike(scene)
  const chains = chainsOf(scene).filter(({ chain }) => chain.length > 0)
  if (target === "sideMm") return chains.flatMap((chain) => (chain.arm === undefined ? [] : stackOn([chain], disc)))
  return together(chains).flatMap((group) => [...extenderOf(group), ...stackOn(group, disc), ...stacksOff(group)])
}

/** A chain by itself, and the two arms of a V-bar, left first, as one where both are there. */
function together(chains: readonly ChainPlace[]): ChainPlace[][] {
  const right = (left: ChainPlace) => {
    const path = left.path.replace(/left$/, "right")
    return chains.find((chain) => chain.arm?.side === "right" && chain.path === path)
  }
  const twins = new Map(chains.map((chain) => [chain, chain.arm?.side === "left" ? right(chain) : undefined]))
  const taken = new Set(twins.values())
  return chains
    .filter((chain) => !taken.has(chain))
    .map((chain) => [chain, twins.get(chain)].filter((one) => one !== undefined))
}

const edit = ({ address, path }: ChainPlace, index: number, put: Element | null): ChainEdit => ({
  chain: address,
  path,
  index,
  put,
})

function extenderOf(group: readonly ChainPlace[]): Structure[] {
  const places = group.map(({ chain }) => chain.findIndex(({ part }) => part === "extender"))
  if (places.every((at) => at < 0)) {
    const lengthMm = (size: number) => SHORTEST_EXTENDER + (size - 1) * EXTENDER_STEP
    return [
      {
        kind: "addExtender",
        sizes: Math.floor((LONGEST_EXTENDER - SHORTEST_EXTENDER) / EXTENDER_STEP) + 1,
        edits: (size) => group.map((place) => edit(place, 0, extender(lengthMm(size)))),
        cost: (size) => costs.extenderIn + costs.perMm * lengthMm(size),
      },
    ]
  }
  // An extender alone on its chain is not what keeps the balance.
  if (places.some((at) => at < 0) || group.some(({ chain }) => chain.length === 1)) return []
  const edits = () => group.map((place, i) => edit(place, places[i]!, null))
  return [{ kind: "removeExtender", sizes: 1, edits, cost: () => costs.extenderOut }]
}

/** As a new one, as heavy for its length. */
function extender(lengthMm: number): PartOf<"extender"> {
  const model = newElement.extender
  return { ...model, lengthMm, massG: Math.round((model.massG * lengthMm) / model.lengthMm) }
}

function stackOn(group: readonly ChainPlace[], disc: PartOf<"weights">): Structure[] {
  const bare = group.every(({ chain }) => chain.at(-1)?.part === "rod" || chain.at(-1)?.part === "damper")
  if (!bare) return []
  return [
    {
      kind: "addStack",
      sizes: MOST_DISCS,
      edits: (count) => group.map((place) => edit(place, place.chain.length, { ...disc, count })),
      cost: (count) => group.length * (count + costs.stack),
    },
  ]
}

function stacksOff(group: readonly ChainPlace[]): Structure[] {
  return group[0]!.chain.flatMap((element, index) => {
    const stacks = group.map(({ chain }) => chain[index])
    const count = stacks.reduce((sum, stack) => sum + large(stack), 0)
    if (element.part !== "weights" || stacks.some((stack) => large(stack) === 0)) return []
    if (group.some(({ chain }) => chain.length === 1)) return []
    const edits = () => group.map((place) => edit(place, index, null))
    return [{ kind: "removeStack", sizes: 1, edits, cost: () => count + costs.stack * group.length }]
  })
}

/** Discs of a stack with more than are ever taken off one by one, else 0. */
const large = (element: Element | undefined): number =>
  element?.part === "weights" && element.count > MOST_DISCS ? element.count : 0

/** A disc like those on the rig already, or a new one where there are none. */
function discLike(scene: Scene): PartOf<"weights"> {
  const stacks = chainsOf(scene).flatMap(({ chain }) => chain.filter((element) => element.part === "weights"))
  const { eachG, outerMm, thicknessMm } = stacks[0] ?? newElement.weights
  return { part: "weights", count: 1, eachG, outerMm, thicknessMm }
}
