import { failure } from "../scene/errors"
import { asCompound, asRecurve, plainStringing } from "../scene/otherKind"
import type { Bow, MountName } from "../scene/schema"
import { newMount } from "../scene/templates"
import type { Bench } from "../state/bench"
import { edits } from "../words/edits"
import type { Command } from "./command"

/** Whether a recurve's string may lie on its limbs near brace. */
export const setStringWrap: Command<{ wrap: boolean }> = {
  id: "set-string-wrap",
  run(bench, { wrap }) {
    if (bench.store.getState().scene.bow.kind === "compound") {
      return failure({ code: "not-allowed", path: "bow.stringWrap", message: edits.compoundWrap })
    }
    return bench.change(wrap ? edits.wrap : edits.noWrap, (draft) => {
      if (draft.bow.kind === "recurve") draft.bow.stringWrap = wrap
    })
  },
}

/**
 * Makes a recurve of a compound or the other way round, as one step, keeping what both kinds have. Limbs that cannot
 * be strung to the bow's own brace height and draw length take those of a new bow.
 */
export const setBowKind: Command<{ kind: Bow["kind"] }> = {
  id: "set-bow-kind",
  run(bench, { kind }) {
    const { bow } = bench.store.getState().scene
    if (bow.kind === kind) return { ok: true, value: undefined }
    if (bow.kind === "recurve") {
      const other = asCompound(bow)
      return other.ok ? putBow(bench, other.value) : other
    }
    const other = asRecurve(bow)
    const kept = putBow(bench, other)
    return kept.ok ? kept : putBow(bench, { ...other, ...plainStringing() })
  },
}

const putBow = (bench: Bench, bow: Bow) =>
  bench.change(edits.kinds[bow.kind], (draft) => {
    draft.bow = structuredClone(bow) as typeof draft.bow
  })

/** Gives the bow a mount it has not got, where such mounts usually are. */
export const addMount: Command<{ mount: MountName }> = {
  id: "add-mount",
  run(bench, { mount }) {
    return bench.change(edits.added(edits.mounts[mount]), (draft) => {
      draft.mounts[mount] ??= structuredClone(newMount[mount]) as (typeof draft.mounts)[typeof mount]
    })
  },
}
