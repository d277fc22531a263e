import { chainsOf, twinKey } from "../address"
import { nameCounter } from "../assemble/parts"
import type { Scene } from "../schema"
import { type Slot, slotsOf } from "../slots"
import type { SlotChange } from "./change"
import { LARGEST_SWAP, LARGEST_SWAP_SHARE, LARGEST_TURN, MOST_DISCS } from "./settings"
import type { TargetKey } from "./targets"

export type KnobKind = "discs" | "shiftDiscs" | "splay" | "droop" | "length"

/** One thing a coach can turn at the bench, in whole steps: one slot, or two of a mirrored pair together. */
export interface Knob {
  readonly kind: KnobKind
  /** Each slot it sets and by how much per step, in the file's unit. */
  readonly moves: readonly { readonly slot: Slot; readonly perStep: number }[]
  /** Steps allowed down (0 or less) and up. */
  readonly least: number
  readonly most: number
}

/** What the knob sets when turned by `steps`. */
export const turned = ({ moves }: Knob, steps: number): SlotChange[] =>
  moves.map(({ slot, perStep }) => ({ key: slot.key, value: slot.value + steps * perStep }))

/**
 * The knobs that may serve a target. What stands on both arms of a V-bar is turned together, so that a symmetric
 * rig stays symmetric; only for the target to the side are discs put on one arm, or moved from arm to arm.
 */
export function knobsFor(target: TargetKey, scene: Scene): Knob[] {
  const slots = new Map(slotsOf(scene).map((slot) => [slot.key, slot]))
  const turnable = turnableKeys(scene).flatMap(({ key, kind }) => {
    const slot = slots.get(key)
    if (slot === undefined) return []
    const twin = slots.get(twinKey(key) ?? "")
    return [{ kind, slot, twin }]
  })
  if (target !== "sideMm") {
    // The right twin comes with the left one.
    const once = turnable.filter(({ slot, twin }) => twin === undefined || slot.key < twin.key)
    return once.map(({ kind, slot, twin }) => knob(kind, twin === undefined ? [slot] : [slot, twin]))
  }
  return turnable
    .filter(({ kind }) => kind === "discs")
    .flatMap(({ kind, slot, twin }) => {
      const alone = knob(kind, [slot])
      return twin === undefined || twin.key < slot.key ? [alone] : [alone, shiftKnob(slot, twin)]
    })
}

function turnableKeys(scene: Scene): { key: string; kind: KnobKind }[] {
  return chainsOf(scene).flatMap(({ path, chain, arm }) => {
    const keys: { key: string; kind: KnobKind }[] = []
    if (arm !== undefined)
      keys.push({ key: `${path}:splayDeg`, kind: "splay" }, { key: `${path}:droopDeg`, kind: "droop" })
    const named = nameCounter()
    for (const { part } of chain) {
      const owner = `${path}/${named(part)}`
      if (part === "weights") keys.push({ key: `${owner}:count`, kind: "discs" })
      if (part === "rod" || part === "extender") keys.push({ key: `${owner}:lengthMm`, kind: "length" })
    }
    return keys
  })
}

function knob(kind: KnobKind, slots: readonly Slot[]): Knob {
  const moves = slots.map((slot) => ({ slot, perStep: slot.field.step }))
  return {
    kind,
    moves,
    least: Math.max(...slots.map((slot) => Math.ceil((lowest(kind, slot) - slot.value) / slot.field.step))),
    most: Math.min(...slots.map((slot) => Math.floor((highest(kind, slot) - slot.value) / slot.field.step))),
  }
}

/** Discs from the left stack to the right one (up), or back (down). */
function shiftKnob(left: Slot, right: Slot): Knob {
  const most = (from: Slot, to: Slot) => Math.min(MOST_DISCS, from.value - from.field.min, to.field.max - to.value)
  return {
    kind: "shiftDiscs",
    moves: [
      { slot: left, perStep: -1 },
      { slot: right, perStep: 1 },
    ],
    least: 0 - most(right, left),
    most: most(left, right),
  }
}

const reach = (kind: KnobKind, { value }: Slot): number => {
  if (kind === "length") return Math.min(LARGEST_SWAP, value * LARGEST_SWAP_SHARE)
  return kind === "discs" ? MOST_DISCS : LARGEST_TURN
}

function lowest(kind: KnobKind, slot: Slot): number {
  // Arms splayed below zero cross behind the bow.
  const floor = kind === "splay" && slot.value >= 0 ? 0 : slot.field.min
  return Math.max(floor, slot.value - reach(kind, slot))
}

const highest = (kind: KnobKind, slot: Slot): number => Math.min(slot.field.max, slot.value + reach(kind, slot))
