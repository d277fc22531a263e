import { openScene } from "../../commands/bench"
import { compareWith } from "../../commands/compare"
import { type Result, success } from "../../scene/errors"
import type { Scene } from "../../scene/schema"
import type { Bench } from "../../state/bench"
import type { LessonAsked } from "../../state/lesson"
import { links } from "../../words/links"
import { isLessonLink, readLink, shippedLessonIn } from "./link"

/** The lesson that a link shows; null where it is to a setup. */
export function lessonOf(link: string): LessonAsked | null {
  if (isLessonLink(link)) return { kind: "link", link }
  const id = shippedLessonIn(link)
  return id === null ? null : { kind: "shipped", id }
}

/**
 * Puts the setup of a link on the bench, where what was there is one Undo away, or shows its lesson over it. A bad link
 * is explained and changes nothing.
 */
export function openLink(bench: Bench, link: string): Result<void> {
  const lesson = lessonOf(link)
  if (lesson !== null) {
    bench.setView({ lesson, notice: null })
    return success(undefined)
  }
  const use = (scene: Scene) => {
    const opened = openScene.run(bench, { scene, fileName: null, saved: false })
    if (opened.ok) bench.say(links.opened(scene.name))
    return opened
  }
  return take(bench, link, links.notOpened, use)
}

/** Holds the setup of a link beside the one on the bench. */
export const compareLink = (bench: Bench, link: string): Result<void> =>
  take(bench, link, links.notCompared, (scene) => compareWith.run(bench, { name: scene.name, scene }))

function take(bench: Bench, link: string, failed: string, use: (scene: Scene) => Result<void>): Result<void> {
  const read = readLink(link)
  const used = read.ok ? use(read.value) : read
  bench.setView({ notice: used.ok ? null : { tone: "problem", text: failed, errors: used.errors } })
  return used
}
