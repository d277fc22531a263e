import { toggleExtender } from "../commands/parts"
import type { ExtenderSwitch } from "../picture/extenders"
import type { Bench } from "../state/bench"
import { knobs as words } from "../words/knobs"

/** Presses a switch, as one undo step; with paired arms the other arm's goes with it. */
export function pressSwitch(bench: Bench, pressed: ExtenderSwitch): void {
  const { pairArms } = bench.store.getState().preferences
  const chains = pairArms && pressed.twin !== null ? [pressed.chain, pressed.twin] : [pressed.chain]
  bench.begin(pressed.present ? words.removeExtender : words.addExtender)
  for (const chain of chains) {
    const done = toggleExtender.run(bench, { chain })
    if (done.ok) continue
    bench.cancel()
    bench.setView({ notice: { tone: "problem", text: words.extenderKept, errors: done.errors } })
    return
  }
  bench.commit()
  bench.say(pressed.present ? words.extenderRemoved : words.extenderAdded)
}
