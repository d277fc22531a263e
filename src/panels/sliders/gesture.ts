import type { Bench } from "../../state/bench"

/** What a slider is moved by: a press on the panel, or a visit to one of its boxes. */
export type By = "press" | "visit"

/** One press or one visit, from its start to its end, as one undo step. */
export interface SliderGesture {
  /** A press ends a visit, as it takes the focus away. */
  start(by: By): void
  /** Runs a change as part of what has started; by itself where nothing has; not at all after giving up. */
  change(label: string, act: () => void): void
  /** Keeps what was changed. Of what has not started by this, nothing ends. */
  end(by: By): void
  /**
   * Takes back what was changed since the start. leva knows no giving up, so what it reports from then to the end is
   * dropped. Says what was given up, null where nothing has started.
   */
  giveUp(): By | null
}

/** `resumed` is called at the end of what was given up: leva then shows other numbers than the bench holds. */
export function sliderGesture(bench: Bench, resumed: () => void): SliderGesture {
  let by: By | null = null
  let state: "started" | "changed" | "given up" = "started"

  const end = (ended: By) => {
    if (by !== ended) return
    by = null
    if (state === "changed") bench.commit()
    if (state === "given up") resumed()
  }
  return {
    start(next) {
      if (by !== null) end(by)
      by = next
      state = "started"
    },
    change(label, act) {
      if (by !== null && state === "given up") return
      if (by !== null && state === "started") {
        bench.begin(label)
        state = "changed"
      }
      act()
    },
    end,
    giveUp() {
      if (by === null) return null
      if (state === "changed") bench.cancel()
      state = "given up"
      return by
    },
  }
}
