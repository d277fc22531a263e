import { kindWords, mountTitle, partNames } from "../../describe/partNames"
import { type Address, chainsOf } from "../../scene/address"
import { nameCounter } from "../../scene/assemble/parts"
import { mountNames } from "../../scene/mountNames"
import type { Element, MountName, Scene } from "../../scene/schema"
import type { BenchState } from "../../state/bench"
import { rig as words } from "../../words/rig"

/** A row of the table: one part and its place among its neighbours. */
export interface RowPlace {
  readonly path: string
  readonly address: Address
  readonly kind: Element["part"] | "accessory" | "bow"
  /** In its list. */
  readonly index: number
  readonly count: number
}

/** What can be added under one heading. */
export type Adding =
  | { readonly to: "chain"; readonly chain: Address; readonly kinds: readonly Element["part"][] }
  | { readonly to: "mount"; readonly mount: MountName; readonly kinds: readonly Element["part"][] }
  | { readonly to: "accessories" }

/** Rows under one heading. */
export interface RowGroup {
  readonly id: string
  readonly title: string
  readonly rows: readonly RowPlace[]
  /** Null for the bow itself, whose parts are given. */
  readonly adding: Adding | null
  /** Under the V-bar that carries it. */
  readonly onArm: boolean
}

const onChain = Object.keys(kindWords) as Element["part"][]
const onAnArm = onChain.filter((kind) => kind !== "vbar")

/** The table's headings and rows: rig by mount with each arm after its chain, accessories, then the bow. */
export function rowGroups(scene: Scene): RowGroup[] {
  const chains = chainsOf(scene)
  const rig = mountNames.flatMap((mount) => {
    const here = chains.filter((place) => place.mount === mount)
    if (here.length === 0) return [emptyMount(mount)]
    return here.map(({ path, address, chain, arm }): RowGroup => {
      const named = nameCounter()
      const rows = chain.map((element, index): RowPlace => {
        const at = [...address, index]
        return { path: `${path}/${named(element.part)}`, address: at, kind: element.part, index, count: chain.length }
      })
      const kinds = arm === undefined ? onChain : onAnArm
      const title = arm === undefined ? mountTitle(mount) : (partNames(scene).get(path)?.title ?? path)
      return { id: path, title, rows, adding: { to: "chain", chain: address, kinds }, onArm: arm !== undefined }
    })
  })
  return [...rig, accessoryGroup(scene), bowGroup(scene)]
}

const emptyMount = (mount: MountName): RowGroup => ({
  id: mount,
  title: mountTitle(mount),
  rows: [],
  adding: { to: "mount", mount, kinds: onChain },
  onArm: false,
})

function accessoryGroup({ accessories }: Scene): RowGroup {
  const named = nameCounter()
  const rows = accessories.map(({ name }, index): RowPlace => {
    const address = ["accessories", index]
    return { path: `accessories/${named(name)}`, address, kind: "accessory", index, count: accessories.length }
  })
  return { id: "accessories", title: words.accessories, rows, adding: { to: "accessories" }, onArm: false }
}

function bowGroup({ pose }: Scene): RowGroup {
  const parts = ["riser", "limbs", "string", ...(pose.draw > 0 ? ["arrow"] : [])]
  const rows = parts.map((part, index): RowPlace => {
    return { path: `bow/${part}`, address: ["bow", part], kind: "bow", index, count: parts.length }
  })
  return { id: "bow", title: words.bow, rows, adding: null, onArm: false }
}

/**
 * A selector of the groups that gives the same object until a part is added, removed, moved or renamed: what a drag
 * changes leaves the table's shape alone.
 */
export function groupsSelector(): (state: BenchState) => readonly RowGroup[] {
  let known: { scene: Scene; signature: string; groups: readonly RowGroup[] } | null = null
  return ({ scene }) => {
    if (known?.scene === scene) return known.groups
    const signature = signatureOf(scene)
    known = { scene, signature, groups: known?.signature === signature ? known.groups : rowGroups(scene) }
    return known.groups
  }
}

function signatureOf(scene: Scene): string {
  const chains = chainsOf(scene).map(({ address, path, chain }) => {
    return [path, ...address, ...chain.map(({ part }) => part)].join(" ")
  })
  return JSON.stringify([chains, scene.accessories.map(({ name }) => name), scene.pose.draw > 0])
}
