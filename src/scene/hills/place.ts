import { type Address, chainAt, chainsOf, valueAt } from "../address"
import { type PathStep, pathText } from "../errors"
import { MAX_CHAIN } from "../fields"
import { mountNames } from "../mountNames"
import type { ArmElement, Element, MountName, PartOf, Scene } from "../schema"

/** The current end of one chain. */
export interface ChainEnd {
  readonly mount: MountName
  /** The chain in the scene document; null for a mount that carries none yet. */
  readonly address: Address | null
}

/** Where a swing weight can hang: at one chain's end, or one alike on each arm of a V-bar. */
export interface HangPlace {
  /** `back`, `front/vbar/left`, or `front/vbar/both` for the two arms. Unique in a scene. */
  readonly path: string
  readonly ends: readonly ChainEnd[]
}

/** Every place that a swing weight can be hung from, in the order of the file, then the mounts that carry nothing. */
export function hangPlaces(scene: Scene): HangPlace[] {
  const places: HangPlace[] = []
  const roomy = chainsOf(scene).filter(({ chain }) => chain.length < MAX_CHAIN)
  for (const { path, mount, address, arm } of roomy) {
    places.push({ path, ends: [{ mount, address }] })
    if (arm?.side !== "right") continue
    const left = [...arm.vbarAddress, "left", "chain"]
    const partner = roomy.find((other) => other.arm?.side === "left" && sameAddress(other.address, left))
    if (partner === undefined) continue
    places.push({ path: path.replace(/right$/, "both"), ends: [partner, { mount, address }].map(chainEnd) })
  }
  const carrying = new Set(scene.rig.map(({ mount }) => mount))
  for (const mount of mountNames) {
    if (scene.mounts[mount] === undefined || carrying.has(mount)) continue
    places.push({ path: mount, ends: [{ mount, address: null }] })
  }
  return places
}

const chainEnd = ({ mount, address }: ChainEnd): ChainEnd => ({ mount, address })

const sameAddress = (a: Address, b: Address): boolean =>
  a.length === b.length && a.every((step, index) => step === b[index])

/**
 * The scene without the swing weights at `addresses`; chains stay, even when nothing is left on them.
 * @throws RangeError when no swing weight stands at one of them, or one is named twice.
 */
export function withoutSwings(scene: Scene, addresses: readonly Address[]): Scene {
  if (new Set(addresses.map(pathText)).size < addresses.length) throw new RangeError("a swing weight is named twice")
  for (const address of addresses) {
    if ((valueAt(scene, address) as Element | undefined)?.part !== "swing") {
      throw new RangeError(`no swing weight stands at ${pathText(address)}`)
    }
  }
  // Last first, so that those still to be taken keep their place in the chain.
  const inOrder = [...addresses].sort((a, b) => Number(b.at(-1)) - Number(a.at(-1)))
  return inOrder
    .sort((a, b) => b.length - a.length)
    .reduce((left, address) => {
      const gone = Number(address.at(-1))
      return changed(left, address.slice(0, -1), (chain) => (chain as Element[]).filter((_, index) => index !== gone))
    }, scene)
}

/**
 * The scene with a swing weight like `swing` at every end of a place of this very scene.
 * @throws RangeError when the scene lacks one of the place's chains.
 */
export function withSwingAt(scene: Scene, place: HangPlace, swing: PartOf<"swing">): Scene {
  let hung = scene
  for (const { mount, address } of place.ends) {
    if (address === null) {
      hung = { ...hung, rig: hung.rig.concat({ mount, chain: [{ ...swing }] }) }
      continue
    }
    if (chainAt(hung, address) === undefined) throw new RangeError(`no chain stands at ${pathText(address)}`)
    hung = changed(hung, address, (chain) => [...(chain as ArmElement[]), { ...swing }])
  }
  return hung
}

function changed(scene: Scene, address: Address, change: (value: unknown) => unknown): Scene {
  return rebuilt(scene, address, change) as Scene
}

/** Shares with the old document all that is not on the way to the address. */
function rebuilt(here: unknown, address: Address, change: (value: unknown) => unknown): unknown {
  const [step, ...rest] = address
  if (step === undefined) return change(here)
  if (Array.isArray(here)) return here.map((entry, index) => (index === step ? rebuilt(entry, rest, change) : entry))
  const owner = here as Readonly<Record<PathStep, unknown>>
  return { ...owner, [step]: rebuilt(owner[step], rest, change) }
}
