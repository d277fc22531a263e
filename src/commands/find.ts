import { failure } from "../scene/errors"
import type { MountName, RigEntry, Scene } from "../scene/schema"
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

/** Puts a found rig on the bow as one undo step; refused for another bow than it was searched for. */
export const trySetup: Command<FoundRig & { readonly name: string }> = {
  id: "try-setup",
  label: "Try this setup",
  run(bench, { name, ...found }) {
    if (!stillFits(found, bench.store.getState().scene)) {
      return failure({ code: "not-allowed", path: "", message: "the bow has changed since the search; search again" })
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
  label: "Compare with this setup",
  run(bench, found) {
    if (found === null) return peek.run(bench, null)
    const { scene } = bench.store.getState()
    return peek.run(bench, { name: "the found setup", scene: { ...scene, rig: [...found.rig] } })
  },
}
