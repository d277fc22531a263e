import type { Result } from "../scene/errors"
import type { Bench, BenchState } from "../state/bench"

/**
 * One thing a person can do. Buttons, keys, handles, lessons and tests all run the same object, so that an action
 * has one name, one rule for when it is possible, and one effect.
 */
export interface Command<A = void> {
  readonly id: string
  /** In KeyboardEvent terms: `mod+z`, `mod+shift+z`; mod is Control, or Command on a Mac. */
  readonly shortcut?: string
  /** Whether it can be done now; left out when it always can. */
  enabled?(state: BenchState): boolean
  /** Errors come back; nothing is changed then. */
  run(bench: Bench, what: A): Result<void>
}

/** One that is called the same wherever it can be pressed. */
export interface NamedCommand<A = void> extends Command<A> {
  /** What the button says. */
  readonly label: string
}

/** A command without a reason to fail. */
export const DONE: Result<void, never> = { ok: true, value: undefined }
