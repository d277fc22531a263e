import { failure, type Result } from "../../scene/errors"
import { parseScene } from "../../scene/parse"
import type { Scene } from "../../scene/schema"
import { links } from "../../words/links"
import { pack, unpack } from "./pack"

/** What the part of an address that holds something begins with; it stands behind `#`, which no browser sends anywhere. */
const SETUP = "setup="
const LESSON = "lesson="
const VERSION = 1
/** A link longer than this is no setup and no lesson, characters. */
const LONGEST = 400_000

export interface LinkWishes {
  /** Also the notes, what was read off the real bow and the log of tried setups. */
  readonly everything: boolean
}

/** The link that opens this setup: the page's own address, and the setup behind its `#`. */
export function linkTo(scene: Scene, page: string, { everything }: LinkWishes): string {
  const { log, measurements, ...setup } = scene
  const held = everything ? scene : { ...setup, notes: "" }
  return address(page, SETUP, JSON.stringify(held))
}

/** The link that shows this lesson, whose file is given, whole. */
export const linkToLesson = (file: string, page: string): string =>
  address(page, LESSON, JSON.stringify(JSON.parse(file)))

const address = (page: string, key: string, text: string): string =>
  `${page.replace(/[?#].*$/s, "")}#${key}${VERSION}.${pack(text)}`

/** Whether a link, or what stands behind its `#`, is meant to show a lesson. */
export const isLessonLink = (link: string): boolean => link.includes(`#${LESSON}`)

/** The name of the lesson that comes with the bench and that a link asks for; null where it asks for none. */
export const shippedLessonIn = (link: string): string | null =>
  link.includes("#") ? null : (/[?&]lesson=([\w-]+)/.exec(link)?.[1] ?? null)

/** Whether a setup has anything that `everything` is about. */
export const hasMore = ({ notes, log, measurements }: Scene): boolean =>
  notes !== "" || (log ?? []).length > 0 || (measurements ?? []).length > 0

/** The setup in a link, or in what stands behind its `#`. It is read like a file from a stranger, which it is. */
export function readLink(link: string): Result<Scene> {
  const text = textIn(link, SETUP, links.nothing)
  return text.ok ? parseScene(text.value) : text
}

/** The file of the lesson in a link, as yet unread: it too comes from a stranger. */
export const readLessonLink = (link: string): Result<string> => textIn(link, LESSON, links.noLesson)

function textIn(link: string, key: string, nothing: string): Result<string> {
  const refuse = (message: string) => failure({ code: "not-a-scene" as const, path: "", message })
  if (link.length > LONGEST) return refuse(links.tooLong)
  const at = link.indexOf(key)
  const [version = "", packed, ...rest] =
    at < 0
      ? []
      : link
          .slice(at + key.length)
          .trim()
          .split(".")
  if (packed === undefined || rest.length > 0 || !/^\d{1,6}$/.test(version)) return refuse(nothing)
  if (Number(version) > VERSION) {
    return failure({
      code: "newer-version",
      path: "",
      message: links.newer(version, String(VERSION)),
    })
  }
  if (Number(version) !== VERSION) return refuse(nothing)
  return unpack(packed)
}
