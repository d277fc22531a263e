import type { Scene } from "../scene/schema"
import type { OtherSetup } from "../state/compared"
import { compare as words } from "../words/compare"
import { type Command, DONE, type NamedCommand } from "./command"

/** Keeps the setup on the bench as it is now, to be compared with whatever it becomes. */
export const holdToCompare: NamedCommand = {
  id: "hold-to-compare",
  label: words.hold,
  run(bench) {
    const { scene } = bench.store.getState()
    bench.setView({ compared: { name: scene.name, scene } })
    bench.say(words.held)
    return DONE
  },
}

/** Compares with a setup from elsewhere: a file, a link, the log. The scene is a checked one. */
export const compareWith: Command<{ name: string; scene: Scene }> = {
  id: "compare-with",
  run(bench, { name, scene }) {
    bench.setView({ compared: { name, scene } })
    bench.say(words.heldThis(name))
    return DONE
  },
}

/** Puts the held setup on the bench, as one undo step, and holds the one that was there. */
export const swapCompared: NamedCommand = {
  id: "swap-compared",
  label: words.swap,
  enabled: ({ compared }) => compared !== null,
  run(bench) {
    const { compared, scene, fileName } = bench.store.getState()
    if (compared === null) return DONE
    const { pose } = scene
    const swapped = bench.load(words.swapped, { ...compared.scene, pose }, { fileName, saved: false })
    if (!swapped.ok) return swapped
    bench.setView({ compared: { name: scene.name, scene } })
    bench.say(words.onBench(compared.name))
    return DONE
  },
}

export const stopComparing: NamedCommand = {
  id: "stop-comparing",
  label: words.stop,
  enabled: ({ compared }) => compared !== null,
  run(bench) {
    bench.setView({ compared: null })
    return DONE
  },
}

/** Shows a setup beside the present one for as long as it is looked at in a list; null when it no longer is. */
export const peek: Command<OtherSetup | null> = {
  id: "peek",
  run(bench, other) {
    if (bench.store.getState().peeked !== other) bench.setView({ peeked: other })
    return DONE
  },
}
