import { openScene } from "../../commands/bench"
import { compareWith } from "../../commands/compare"
import type { Result } from "../../scene/errors"
import type { Scene } from "../../scene/schema"
import type { Bench } from "../../state/bench"
import { readLink } from "./link"

/** Puts the setup of a link on the bench; what was there is one Undo away. A bad link is explained and changes nothing. */
export const openLink = (bench: Bench, link: string): Result<void> =>
  take(bench, link, "opened", (scene) => openScene.run(bench, { scene, fileName: null, saved: false }))

/** Holds the setup of a link beside the one on the bench. */
export const compareLink = (bench: Bench, link: string): Result<void> =>
  take(bench, link, "compared", (scene) => compareWith.run(bench, { name: scene.name, scene }))

function take(bench: Bench, link: string, done: string, use: (scene: Scene) => Result<void>): Result<void> {
  const read = readLink(link)
  const used = read.ok ? use(read.value) : read
  if (used.ok) {
    bench.setView({ notice: null })
    if (read.ok && done === "opened") bench.say(`Opened ${read.value.name} from a link`)
  } else {
    const text = `The setup in the link was not ${done}; the bench is as it was.`
    bench.setView({ notice: { tone: "problem", text, errors: used.errors } })
  }
  return used
}
