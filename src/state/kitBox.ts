import { createStore, type StoreApi } from "zustand/vanilla"
import { type Result, success } from "../scene/errors"
import { kitErrors } from "../scene/kit/parse"
import type { Kit } from "../scene/kit/schema"
import type { Home } from "./kept"

export interface KitState {
  readonly kit: Kit
  readonly fileName: string | null
  /** Kits before and after this one, the nearest last. */
  readonly past: readonly Kit[]
  readonly future: readonly Kit[]
}

/** Where each piece of the kit's state lives; see kept.ts. */
export const keptKit: Readonly<Record<keyof KitState, Home>> = {
  kit: "browser",
  fileName: "browser",
  past: "nowhere",
  future: "nowhere",
}

/** The one owner of the kit. A change that breaks a rule between its fields changes nothing and returns why. */
export interface KitBox {
  readonly store: StoreApi<KitState>
  change(kit: Kit): Result<void>
  /** Puts another kit in its place; the one before is one step back. */
  open(kit: Kit, fileName: string | null): void
  undo(): void
  redo(): void
}

/** Steps back that are kept. */
const MOST_STEPS = 100

export function createKitBox(kit: Kit, fileName: string | null): KitBox {
  const store = createStore<KitState>(() => ({ kit, fileName, past: [], future: [] }))
  const { getState, setState } = store
  const put = (next: Kit) => {
    const { kit: before, past } = getState()
    if (next !== before) setState({ kit: next, past: [...past, before].slice(-MOST_STEPS), future: [] })
  }
  return {
    store,
    change(next) {
      const errors = kitErrors(next)
      if (errors.length > 0) return { ok: false, errors }
      put(next)
      return success(undefined)
    },
    open(next, name) {
      put(next)
      setState({ fileName: name })
    },
    undo() {
      const { kit: now, past, future } = getState()
      const before = past.at(-1)
      if (before !== undefined) setState({ kit: before, past: past.slice(0, -1), future: [...future, now] })
    },
    redo() {
      const { kit: now, past, future } = getState()
      const next = future.at(-1)
      if (next !== undefined) setState({ kit: next, past: [...past, now], future: future.slice(0, -1) })
    },
  }
}
