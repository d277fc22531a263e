import shippedFirst from "../../scenes/target-recurve-straight-bar.json"
import { openScene } from "../commands/bench"
import { timeText } from "../describe/timeText"
import type { Autosave } from "../files/autosave"
import { hasAutosave, layAutosaveAside } from "../files/autosaveWrite"
import type { BrowserStore } from "../files/browserStore"
import { readPreferences } from "../files/preferences"
import { failure, type Result } from "../scene/errors"
import type { Scene } from "../scene/schema"
import { type Bench, createBench, type Notice } from "../state/bench"
import type { FileRules } from "../state/check"
import { NO_HISTORY } from "../state/history"
import type { LessonAsked } from "../state/lesson"
import type { OtherSetup } from "../state/compared"
import { sameValue } from "../state/same"
import { type KeptWork, without, withWork } from "../state/setAside"
import { notices } from "../words/notices"
import { later, withLater } from "./later"
import { lessonLinkIn, linkIn } from "./links"

/**
 * What a first visitor sees. It is a shipped file in the form the bench saves, which a test holds it to, so it needs no
 * validator before the first view.
 */
export const firstScene = shippedFirst as unknown as Scene

/** The scene asked for in the page's address, `?scene=<name in scenes/>`. */
export const sceneAsked = (search: string): string | null => new URLSearchParams(search).get("scene")

/** The lesson asked for in the page's address: a whole one in a link, or `?lesson=<name in scenes/lessons/>`. */
export function lessonAsked(search: string, hash = ""): LessonAsked | null {
  const link = lessonLinkIn(hash)
  if (link !== null) return { kind: "link", link }
  const id = new URLSearchParams(search).get("lesson")
  return id === null ? null : { kind: "shipped", id: id.replace(/\.json$/, "") }
}

/**
 * The bench as it stands when the page opens: the setup of a link, or the scene asked for in the address, else what was
 * on it last, else the first shipped scene. Unsaved work is never dropped: where another scene was asked for, it is set
 * aside, and is offered at every start until it is brought back or discarded.
 */
export async function startBench(store: BrowserStore, search: string, rules: FileRules, hash = ""): Promise<Bench> {
  const link = linkIn(hash)
  const asked = link ?? sceneAsked(search)
  const kept = await lastWork(store)
  const { last, aside, compared } = kept ?? NOTHING
  const bench = createBench(firstScene, readPreferences(store), rules)
  bench.setView({ compared })
  const goOn = (): Notice | null => {
    if (last === null) return standAside(bench, aside)
    const { scene, fileName, unsaved, at } = last
    const opened = openScene.run(bench, { scene, fileName, saved: !unsaved })
    const offer = standAside(bench, without(aside, last))
    if (!opened.ok || !unsaved) return offer
    const back = notices.back(timeText(at))
    return offer === null ? said(back) : { ...offer, text: `${back} ${offer.text}` }
  }
  if (asked === null || (last?.unsaved && last.source === asked)) {
    bench.setView({ notice: goOn() })
  } else {
    const fetched = await fetchAsked(asked, link)
    const opened = fetched.ok
      ? openScene.run(bench, { scene: fetched.value, fileName: null, saved: link === null })
      : fetched
    if (opened.ok) {
      const left = last?.unsaved && !sameValue(last.scene, bench.store.getState().scene)
      bench.setView({ notice: standAside(bench, left ? withWork(aside, last) : aside) })
    } else {
      goOn()
      bench.setView({ notice: { tone: "problem", text: notices.addressNotOpened, errors: opened.errors } })
    }
  }
  bench.store.setState({ history: NO_HISTORY })
  bench.setView({ lesson: lessonAsked(search, hash) })
  if (kept === null) bench.setView({ notice: UNREAD })
  return bench
}

/** The setup of a link, or the scene of a name. Never rejects. */
async function fetchAsked(name: string, link: string | null): Promise<Result<Scene>> {
  try {
    const { fetchLinked, fetchShipped } = await later()
    return await (link === null ? fetchShipped(name) : fetchLinked(link))
  } catch {
    return failure({ code: "not-a-scene", path: "", message: notices.partAway })
  }
}

/** Lays unsaved work beside the bench and says so, with the latest to be had at once. */
function standAside(bench: Bench, setAside: readonly KeptWork[]): Notice | null {
  bench.store.setState({ setAside })
  const [work, ...more] = setAside
  if (work === undefined) return null
  return {
    ...said(notices.kept(timeText(work.at), more.length)),
    offer: {
      label: notices.bringBack,
      run: () => withLater(bench, ({ bringBack }) => bringBack.run(bench, { work, now: Date.now() })),
    },
  }
}

const said = (text: string): Notice => ({ tone: "info", text, errors: [] })

interface LastWork {
  readonly last: Autosave | null
  readonly aside: readonly KeptWork[]
  readonly compared: OtherSetup | null
}

const NOTHING: LastWork = { last: null, aside: [], compared: null }

const UNREAD: Notice = { tone: "problem", text: notices.unread, errors: [] }

/** What the browser has kept; null when the reader could not be fetched, and what is kept is then safe from autosaves. */
async function lastWork(store: BrowserStore): Promise<LastWork | null> {
  if (!hasAutosave(store)) return NOTHING
  try {
    const { readAutosave, readCompared, readSetAside } = await import("../files/autosave")
    return { last: readAutosave(store), aside: readSetAside(store), compared: readCompared(store) }
  } catch {
    layAutosaveAside(store)
    return null
  }
}
