import { chosenAt, combinations, type FindProblem, type Options } from "../../core/find"
import { mountDirection, type Side } from "../../core/rig"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import type { LimbFailure } from "../../core/limbs"
import { along, type Vec3 } from "../../core/solids"
import { metres, MM } from "../assemble"
import { valuesOf } from "../hills/steps"
import type { Kit } from "../kit/schema"
import { success } from "../result"
import type { Element, Mount, MountName, RigEntry, Scene } from "../schema"
import { armBranch, type Arms, type Branch, chainBranch, noBranch } from "./branches"
import { limitsOf } from "./limits"
import { type ChainOption, chainOption, chainOptions, type Kinds, kindsOf, stackCount, stacksOf } from "./pieces"
import { mountsWithSwings } from "./mounts"
import type { FindQuestion, FindTarget } from "./question"
import { staysOf } from "./stays"

/** All setups that a kit allows on a bow, as the engine's problem, and the way back from its answers. */
export interface SetupSpace {
  readonly problem: FindProblem
  /** The key of the target behind each of the problem's limits. */
  readonly limitKeys: readonly (keyof FindTarget)[]
  /** The whole rig at a place of the order, with what stays. */
  rigAt(order: number): RigEntry[]
}

/** Why there is nothing to search. It is found where no words are, in a worker; `spaceErrors` has the words. */
export type SpaceFault =
  | { readonly why: "no-mounts" | "mount-twice" | "no-vbar" | "no-front-rod" | "nothing" }
  | { readonly why: "no-mount" | "swing-on" | "other-mount"; readonly mount: MountName }
  | { readonly why: "wrong-way-round"; readonly key: BandKey; readonly band: readonly [number, number] }
  /** Options, stacks or combinations. */
  | { readonly why: "too-many"; readonly many: number }
  | { readonly why: "limbs"; readonly failure: LimbFailure }

type BandKey = "forwardMm" | "upMm" | "sideMm" | "netLiftNm"
type SpaceResult =
  | { readonly ok: true; readonly value: SetupSpace }
  | { readonly ok: false; readonly fault: SpaceFault }

const refused = (fault: SpaceFault): SpaceResult => ({ ok: false, fault })

/** Stacks and options beyond these take longer to list than a coach would wait, and more memory than a phone has. */
export const MOST_STACKS = 5_000
export const MOST_OPTIONS = 500_000

/**
 * Lists what can be built. Fails, saying why, when a mount is missing or carries a swing
 * weight, when there are more options than can be held, or when the limbs cannot take their shape.
 */
export function setupSpace(scene: Scene, kit: Kit, question: FindQuestion): SpaceResult {
  const wrong = questionFault(scene, kit, question)
  if (wrong !== null) return refused(wrong)
  const stays = staysOf(scene, question)
  if (!stays.ok) return refused({ why: "limbs", failure: stays })
  const kinds = kindsOf(kit)
  const { mounts, vbarMount } = question
  const trunks = trunksOf(scene, kinds, question)
  const stacks = stacksOf(kinds, question.mostDiscs)
  const others = mounts
    .filter((mount) => mount !== vbarMount)
    .map((mount) => {
      const rod = mount === "front" && question.always.frontRod
      const chains = chainOptions(kinds, stacks, { arm: false, extenders: true, none: true, rod })
      return { mount, branch: mountBranch(scene.mounts[mount]!, chains, kinds) }
    })
  const held = trunks.reduce((sum, { branches }) => sum + branches.reduce((rows, { count }) => rows + count, 0), 0)
  if (held > MOST_OPTIONS) return refused({ why: "too-many", many: held })
  const limits = limitsOf(question.target)
  /** The same pieces in the same places, whatever the angles. */
  function groupOf(order: number): string {
    const { trunk, options } = chosenAt(problem, order)
    const { piecesOf, branches } = trunks[trunk]!
    const rest = others.map(({ branch }, index) => branch.piecesOf(options[branches.length + index]!))
    return [trunk, ...piecesOf(options), ...rest].join(",")
  }
  const problem: FindProblem = {
    ...stays.value,
    trunks: trunks.map(({ own, branches }) => ({
      own,
      branches: [...branches, ...others.map(({ branch }) => branch.options)],
    })),
    stock: Uint8Array.from(kinds.stock),
    limits: limits.map(({ limit }) => limit),
    score: { kind: question.score },
    count: question.count,
    ...(question.variety === "pieces" ? { groupOf } : {}),
  }
  const all = combinations(problem)
  if (all === 0) return refused({ why: "nothing" })
  if (all > Number.MAX_SAFE_INTEGER) return refused({ why: "too-many", many: all })
  const rigAt = (order: number): RigEntry[] => {
    const { trunk, options } = chosenAt(problem, order)
    const { chain, branches } = trunks[trunk]!
    const built = new Map<MountName, readonly Element[]>()
    if (vbarMount !== null) built.set(vbarMount, chain(options))
    others.forEach(({ mount, branch }, index) => {
      built.set(mount, branch.at(options[branches.length + index]!))
    })
    const kept = scene.rig.flatMap((entry) => {
      const chain = built.get(entry.mount)
      built.delete(entry.mount)
      return chain === undefined ? [entry] : [{ mount: entry.mount, chain: [...chain] }]
    })
    const added = [...built].map(([mount, chain]) => ({ mount, chain: [...chain] }))
    return structuredClone([...kept, ...added].filter(({ chain }) => chain.length > 0))
  }
  return success({ problem, limitKeys: limits.map(({ key }) => key), rigAt })
}

const bandKeys: readonly BandKey[] = ["forwardMm", "upMm", "sideMm", "netLiftNm"]

function questionFault(scene: Scene, kit: Kit, question: FindQuestion): SpaceFault | null {
  const { mounts, vbarMount, target, mostDiscs, always } = question
  if (mounts.length === 0) return { why: "no-mounts" }
  if (new Set(mounts).size < mounts.length) return { why: "mount-twice" }
  for (const mount of mounts) {
    if (scene.mounts[mount] === undefined) return { why: "no-mount", mount }
    if (mountsWithSwings(scene).includes(mount)) return { why: "swing-on", mount }
  }
  if (vbarMount !== null && !mounts.includes(vbarMount)) return { why: "other-mount", mount: vbarMount }
  if (always.vbar && vbarMount !== null && !kit.vbars.some(({ count }) => count > 0)) return { why: "no-vbar" }
  if (always.frontRod && mounts.includes("front") && !kit.rods.some(({ count, use }) => count > 0 && use !== "side")) {
    return { why: "no-front-rod" }
  }
  for (const key of bandKeys) {
    const band = target[key]
    if (band !== undefined && band[0] > band[1]) return { why: "wrong-way-round", key, band }
  }
  const stacks = stackCount(kindsOf(kit), mostDiscs)
  return stacks > MOST_STACKS ? { why: "too-many", many: stacks } : null
}

interface BuiltTrunk {
  readonly own: Options
  readonly branches: readonly Options[]
  /** The chain at the V-bar's mount for chosen options of the branches. */
  chain(options: readonly number[]): Element[]
  /** Which pieces are in them, angles apart. */
  piecesOf(options: readonly number[]): number[]
}

/** Extender and V-bar, in all pairs, on the V-bar's mount; a single bare trunk when there is no such mount. */
function trunksOf(scene: Scene, kinds: Kinds, question: FindQuestion): BuiltTrunk[] {
  const { vbarMount, arms, mostDiscs, always } = question
  const many = kinds.stock.length
  if (vbarMount === null)
    return [{ own: noBranch(many, []).options, branches: [], chain: () => [], piecesOf: () => [] }]
  const mount = scene.mounts[vbarMount]!
  const { start, direction } = lineOf(mount)
  const stacks = stacksOf(kinds, mostDiscs)
  const rod = vbarMount === "front" && always.frontRod
  const tips = chainOptions(kinds, stacks, { arm: false, extenders: false, none: true, rod })
  const armChains = chainOptions(kinds, stacks, { arm: true, extenders: false, none: arms === "free", rod: true })
  const sets: Side[][] = arms === "alike" ? [["left", "right"]] : [["left"], ["right"]]
  const trunks: BuiltTrunk[] = []
  for (const extender of [null, ...kinds.extenders]) {
    for (const vbar of always.vbar ? kinds.vbars : [null, ...kinds.vbars]) {
      const elements = [extender, vbar].flatMap((piece) => (piece === null ? [] : [piece.part as Element]))
      const takes = [extender, vbar].flatMap((piece) => (piece === null ? [] : [piece.kind]))
      const own = chainBranch([chainOption({ elements, takes })], start, direction, many)
      const lengths = [extender?.part.lengthMm ?? 0, vbar?.part.lengthMm ?? 0] as const
      const tip = chainBranch(tips, along(start, direction, (lengths[0] + lengths[1]) * MM), direction, many)
      const middle = along(start, direction, (lengths[0] + lengths[1] / 2) * MM)
      const hung = sets.map((sides) =>
        vbar === null
          ? noBranch<Arms>(many, {})
          : armBranch(armChains, anglesOf(vbar.entry), sides, middle, vbar.part.armOffsetMm, many),
      )
      trunks.push(builtTrunk(elements, own, tip, hung))
    }
  }
  return trunks
}

function builtTrunk(
  elements: readonly Element[],
  own: Branch<unknown>,
  tip: Branch<ChainOption["elements"]>,
  hung: readonly Branch<Arms>[],
): BuiltTrunk {
  return {
    own: own.options,
    branches: [tip.options, ...hung.map(({ options }) => options)],
    piecesOf: (options) => [tip, ...hung].map((branch, index) => branch.piecesOf(options[index]!)),
    chain(options) {
      const arms = Object.assign({}, ...hung.map((branch, index) => branch.at(options[index + 1]!))) as Arms
      const inner = elements.map((element) => (element.part === "vbar" ? { ...element, ...arms } : element))
      return [...inner, ...tip.at(options[0]!)]
    },
  }
}

const anglesOf = ({ splayDeg, droopDeg }: Kit["vbars"][number]) =>
  valuesOf(splayDeg).flatMap((splay) => valuesOf(droopDeg).map((droop) => ({ splayDeg: splay, droopDeg: droop })))

function mountBranch(mount: Mount, chains: readonly ChainOption[], kinds: Kinds): Branch<ChainOption["elements"]> {
  const { start, direction } = lineOf(mount)
  return chainBranch(chains, start, direction, kinds.stock.length)
}

const lineOf = ({ atMm, pitchDeg, yawDeg }: Mount): { start: Vec3; direction: Vec3 } => ({
  start: metres(atMm),
  direction: mountDirection(pitchDeg * DEGREE, yawDeg * DEGREE),
})
