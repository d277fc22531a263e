import shippedFirst from "../../scenes/target-recurve-straight-bar.json"
import { openScene } from "../commands/bench"
import type { Autosave } from "../files/autosave"
import { hasAutosave } from "../files/autosaveWrite"
import type { BrowserStore } from "../files/browserStore"
import { readPreferences } from "../files/preferences"
import { fetchShipped } from "../files/shipped"
import type { Scene } from "../scene/schema"
import { type Bench, createBench, type Notice } from "../state/bench"
import type { FileRules } from "../state/check"

/**
 * What a first visitor sees. It is a shipped file in the form the bench saves, which a test holds it to, so it needs no
 * validator before the first view.
 */
export const firstScene = shippedFirst as unknown as Scene

/** The scene asked for in the page's address, `?scene=<name in scenes/>`. */
export const sceneAsked = (search: string): string | null => new URLSearchParams(search).get("scene")

/**
 * The bench as it stands when the page opens: the scene asked for in the address, else what was on it last, else the
 * first shipped scene. Unsaved work is never dropped: where another scene was asked for, it can be brought back.
 */
export async function startBench(store: BrowserStore, search: string, rules: FileRules): Promise<Bench> {
  const asked = sceneAsked(search)
  const autosave = await lastWork(store)
  const bench = createBench(firstScene, readPreferences(store), rules)
  if (asked === null || (autosave?.unsaved && autosave.source === asked)) {
    if (autosave !== null) restore(bench, autosave)
    return bench
  }
  const fetched = await fetchShipped(asked)
  const opened = fetched.ok ? openScene.run(bench, { scene: fetched.value, fileName: null, saved: true }) : fetched
  bench.store.setState({ history: { past: [], future: [] } })
  if (!opened.ok) {
    if (autosave !== null) restore(bench, autosave)
    bench.setView({
      notice: { tone: "problem", text: `The scene in the address was not opened.`, errors: opened.errors },
    })
  } else if (autosave?.unsaved) {
    bench.setView({
      notice: {
        tone: "info",
        text: `Unsaved work from ${clock(autosave.at)} is kept.`,
        errors: [],
        offer: {
          label: "Bring it back",
          run: () => void openScene.run(bench, { scene: autosave.scene, fileName: autosave.fileName, saved: false }),
        },
      },
    })
  }
  return bench
}

function restore(bench: Bench, autosave: Autosave): void {
  const { scene, fileName, unsaved, at } = autosave
  const opened = openScene.run(bench, { scene, fileName, saved: !unsaved })
  bench.store.setState({ history: { past: [], future: [] } })
  if (opened.ok && unsaved) bench.setView({ notice: restored(at) })
}

const restored = (at: number): Notice => ({
  tone: "info",
  text: `Your unsaved work from ${clock(at)} is back.`,
  errors: [],
})

const clock = (at: number): string =>
  new Date(at).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" })

async function lastWork(store: BrowserStore): Promise<Autosave | null> {
  if (!hasAutosave(store)) return null
  try {
    const { readAutosave } = await import("../files/autosave")
    return readAutosave(store)
  } catch {
    // The reader could not be fetched: the page starts all the same, and what is kept stays until something changes.
    return null
  }
}
