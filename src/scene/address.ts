import { nameCounter } from "./assemble/parts"
import type { PathStep } from "./errors"
import type { Arm, Element, MountName, Scene } from "./schema"

/** The place of a chain in the scene document, and of one element in it. */
export type Address = readonly PathStep[]

/** The value at an address, or undefined where nothing stands. */
export function valueAt(scene: Scene, address: Address): unknown {
  let here: unknown = scene
  for (const step of address) {
    if (here === null || typeof here !== "object") return undefined
    here = (here as Readonly<Record<PathStep, unknown>>)[step]
  }
  return here
}

/** The chain at an address that names one, else undefined. */
export function chainAt(scene: Scene, address: Address): Element[] | undefined {
  const found = valueAt(scene, address)
  return Array.isArray(found) && address.at(-1) === "chain" ? (found as Element[]) : undefined
}

/** One chain with its place, its name for people and machines, and what carries it. */
export interface ChainPlace {
  /** `front` or `front/vbar/left`. */
  readonly path: string
  readonly address: Address
  readonly mount: MountName
  readonly chain: readonly Element[]
  /** Set for a chain on a V-bar's arm. */
  readonly arm?: { readonly side: "left" | "right"; readonly value: Arm; readonly vbarAddress: Address }
}

/** All chains of a scene, an arm's after the chain that carries it. */
export function chainsOf(scene: Scene): ChainPlace[] {
  return scene.rig.flatMap(({ mount, chain }, index) => {
    const places: ChainPlace[] = [{ path: mount, address: ["rig", index, "chain"], mount, chain }]
    const named = nameCounter()
    chain.forEach((element, at) => {
      const path = `${mount}/${named(element.part)}`
      if (element.part !== "vbar") return
      for (const side of ["left", "right"] as const) {
        const arm = element[side]
        if (arm === undefined) continue
        const vbarAddress = ["rig", index, "chain", at]
        places.push({
          path: `${path}/${side}`,
          address: [...vbarAddress, side, "chain"],
          mount,
          chain: arm.chain,
          arm: { side, value: arm, vbarAddress },
        })
      }
    })
    return places
  })
}

/** The key of the same number on the other arm of the V-bar (`left` ↔ `right`), or null off the arms. */
export function twinKey(key: string): string | null {
  if (key.includes("/left")) return key.replace(/\/left(?=[/:])/, "/right")
  if (key.includes("/right")) return key.replace(/\/right(?=[/:])/, "/left")
  return null
}
