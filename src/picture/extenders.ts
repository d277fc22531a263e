import { along, type Vec3 } from "../core/solids"
import { mountWords, partTitle } from "../describe/partNames"
import { type Address, chainsOf } from "../scene/address"
import { metres } from "../scene/assemble"
import type { Evaluation } from "../scene/evaluate"
import type { Scene } from "../scene/schema"
import { handle as words } from "../words/handle"
import type { Pane } from "./handle"

/** The switch at the root of a chain that puts an extender there or takes it away. */
export interface ExtenderSwitch {
  /** The chain's path, `front` or `front/vbar/left`. */
  readonly path: string
  readonly chain: Address
  readonly present: boolean
  /** What pressing it does: "Add an extender, front". */
  readonly label: string
  /** Bow axes, m. */
  readonly place: Vec3
  readonly seen: Pane
  /** The V-bar's other arm, where both have an extender or neither has: they are switched together when paired. */
  readonly twin: Address | null
}

/** The switch stands this far along the chain from its root, m. */
const FROM_ROOT = 0.012

/** One switch a chain, arms included. */
export function extenderSwitches(scene: Scene, { now }: Evaluation): ExtenderSwitch[] {
  const chains = chainsOf(scene)
  const has = (path: string) => chains.find((chain) => chain.path === path)?.chain.some(isExtender) ?? null
  return chains.flatMap(({ path, address, chain, mount, arm }) => {
    const at = scene.mounts[mount]
    if (at === undefined || (chain.length === 0 && arm === undefined)) return []
    const present = chain.some(isExtender)
    const line = arm && now.parts.find((part) => samePlace(part.address, arm.vbarAddress))?.arms?.[arm.side]
    const place = line ? along(line.start, line.direction, FROM_ROOT) : metres(at.atMm)
    const other = arm?.side === "left" ? "right" : "left"
    const twinPath = arm === undefined ? null : `${path.slice(0, path.lastIndexOf("/"))}/${other}`
    const twin = twinPath !== null && has(twinPath) === present && arm ? [...arm.vbarAddress, other, "chain"] : null
    const where = arm ? lower(partTitle(scene, path)) : mountWords[mount]
    const label = present ? words.removeExtender(where) : words.addExtender(where)
    return [{ path, chain: address, present, label, place, seen: arm ? "top" : "side", twin } satisfies ExtenderSwitch]
  })
}

const isExtender = ({ part }: { part: string }): boolean => part === "extender"
const samePlace = (a: Address, b: Address): boolean => a.length === b.length && a.every((step, i) => step === b[i])
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
