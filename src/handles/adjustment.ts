import { setNumber } from "../commands/numbers"
import { problemText } from "../describe/problemText"
import type { Handle } from "../picture/handle"
import { changeText, limitText, valueText } from "../picture/handleText"
import type { Scene } from "../scene/schema"
import type { Bench } from "../state/bench"
import { knobs as words } from "../words/knobs"
import { handleNamed } from "./current"

/** One change under way on one handle, by a drag or a held key: in the end one undo step, or nothing. */
export interface Adjustment {
  readonly key: string
  /** False once somebody else has ended the gesture, by undoing for instance. */
  live(): boolean
  /** Goes to a value; returns why it goes no further: the value is refused, and the handle stays, or ends its range. */
  set(value: number): string | null
  /** Keeps what was reached and says it. */
  keep(): void
  /** Puts back what was there before and says so. */
  giveUp(): void
}

export function beginAdjustment(bench: Bench, handle: Handle): Adjustment {
  const { key, label, value: before } = handle
  const { store } = bench
  bench.begin(label)
  const base: Scene = store.getState().scene
  const live = () => store.getState().gesture?.base === base
  let told: string | null = null
  const tell = (reason: string | null) => {
    if (reason !== null && reason !== told) bench.say(reason)
    told = reason
    return reason
  }
  return {
    key,
    live,
    set(value) {
      if (value !== handleNamed(store.getState(), key)?.value) {
        const done = setNumber.run(bench, { key, value })
        if (!done.ok) return tell(words.notPossible(problemText(store.getState(), done.errors)))
      }
      return tell(limitText(handle, value, store.getState().preferences))
    },
    keep() {
      if (!live()) return
      bench.commit()
      const state = store.getState()
      const now = handleNamed(state, key)
      if (now === undefined || now.value === before) return
      bench.say(changeText(now, state.evaluation, state.preferences))
    },
    giveUp() {
      if (!live()) return
      bench.cancel()
      bench.say(words.back(label, valueText(handle, store.getState().preferences)))
    },
  }
}
