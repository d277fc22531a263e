import { failure } from "../scene/errors"
import type { Asked, FindQuestion } from "../scene/find"
import { type Kit, kitSections } from "../scene/kit"
import type { MountName, RigEntry, Scene } from "../scene/schema"
import { edits } from "../words/edits"
import type { Command } from "./command"
import { peek } from "./compare"

/** A rig that was found for a bow: `mounts` were built anew, the others stayed. */
export interface FoundRig {
  /** The scene it was searched for. */
  readonly asked: Scene
  readonly mounts: readonly MountName[]
  readonly rig: readonly RigEntry[]
}

/**
 * Whether a rig found for one scene still fits another: the bow, what is fixed to it, its mounts and the archer are the
 * same, and so is what stayed on the other mounts. The mounts built anew may carry anything by now.
 */
export const stillFits = ({ asked, mounts }: Pick<FoundRig, "asked" | "mounts">, scene: Scene): boolean =>
  same(asked.bow, scene.bow) &&
  same(asked.accessories, scene.accessories) &&
  same(asked.mounts, scene.mounts) &&
  same(asked.archer, scene.archer) &&
  same(stayed(asked, mounts), stayed(scene, mounts))

const stayed = ({ rig }: Scene, mounts: readonly MountName[]) =>
  rig.filter(({ mount, chain }) => !mounts.includes(mount) && chain.length > 0)

/** Bows and chains are small plain data; the engine keeps unchanged ones as they are, so this mostly ends at once. */
const same = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b)

/** What of a search's asking is no longer so. The kit's name, and where the rig stands that is built anew, ask nothing. */
export const changedSince = (
  { scene, kit, question }: Asked,
  now: { readonly scene: Scene; readonly kit: Kit; readonly question: FindQuestion },
): { bow: boolean; kit: boolean; question: boolean } => ({
  bow: !stillFits({ asked: scene, mounts: question.mounts }, now.scene),
  kit: kitSections.some((section) => !same(kit[section], now.kit[section])),
  question: question !== now.question && inOrder(question) !== inOrder(now.question),
})

/** A limit that was dropped and taken up again stands at another place of the question, which is the same. */
const inOrder = (value: unknown): string =>
  JSON.stringify(value, (_, each: unknown) =>
    each !== null && typeof each === "object" && !Array.isArray(each)
      ? Object.fromEntries(Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1)))
      : each,
  )

/**
 * The scene with the rig it was searched for, while one of the rigs found for it is tried: what a bow suggests to ask
 * does not change by trying an answer.
 */
export const beforeTrying = (
  { scene: asked, question: { mounts } }: Pick<Asked, "scene" | "question">,
  rigs: readonly (readonly RigEntry[])[],
  scene: Scene,
): Scene =>
  stillFits({ asked, mounts }, scene) && rigs.some((rig) => same(rig, scene.rig)) ? { ...scene, rig: asked.rig } : scene

/** Puts a found rig on the bow as one undo step; refused for another bow than it was searched for. */
export const trySetup: Command<FoundRig & { readonly name: string }> = {
  id: "try-setup",
  run(bench, { name, ...found }) {
    if (!stillFits(found, bench.store.getState().scene)) {
      return failure({ code: "not-allowed", path: "", message: edits.otherBow })
    }
    bench.setView({ peeked: null })
    return bench.change(name, (draft) => {
      draft.rig = structuredClone(found.rig) as typeof draft.rig
    })
  },
}

/** Shows a found rig beside the present one for as long as it is looked at; null takes it away again. */
export const compareSetup: Command<FoundRig | null> = {
  id: "compare-setup",
  run(bench, found) {
    if (found === null) return peek.run(bench, null)
    const { scene } = bench.store.getState()
    return peek.run(bench, { name: edits.foundSetup, scene: { ...scene, rig: [...found.rig] } })
  },
}
