import * as z from "zod/mini"
import { type FindQuestion, questionSchema } from "../scene/find"
import { emptyKit, type Kit, parseKit, serializeKit } from "../scene/kit"
import { createFinder, type Finder } from "../state/finder"
import { createKitBox, type KitBox } from "../state/kitBox"
import { kitFiles as words } from "../words/kitFiles"
import { type BrowserStore, browserStore } from "./browserStore"
import { spawnWorker, workersHere } from "./findWorkers"
import { watchSleep } from "./tabSleep"

const KEY = "kit"

const keptSchema = z.object({
  kit: z.string(),
  fileName: z.nullable(z.string()),
  question: z.unknown(),
  searching: z._default(z.boolean(), false),
})

interface Kept {
  readonly kit: Kit | null
  readonly fileName: string | null
  readonly question: FindQuestion | null
  /** A search was under way when this was written. */
  readonly searching: boolean
}

/** The kit and the question of the last visit; null for what is not there or cannot be read. */
export function readKeptKit(store: BrowserStore): Kept {
  const nothing = { kit: null, fileName: null, question: null, searching: false }
  let stored: unknown
  try {
    stored = JSON.parse(store.read(KEY) ?? "null")
  } catch {
    return nothing
  }
  const parsed = keptSchema.safeParse(stored)
  if (!parsed.success) return nothing
  const kit = parseKit(parsed.data.kit)
  const question = questionSchema.safeParse(parsed.data.question)
  return {
    kit: kit.ok ? kit.value : null,
    fileName: parsed.data.fileName,
    question: question.success ? question.data : null,
    searching: parsed.data.searching,
  }
}

export const writeKeptKit = (store: BrowserStore, kept: { kit: Kit } & Omit<Kept, "kit">): boolean =>
  store.write(KEY, JSON.stringify({ ...kept, kit: serializeKit(kept.kit) }))

export interface KitBench {
  readonly box: KitBox
  readonly finder: Finder
  /** False once the browser has refused to keep the kit. */
  kept(): boolean
}

let here: KitBench | null = null

/** The page's one kit and search, kept in the browser from now on. */
export function kitBench(store: BrowserStore = browserStore()): KitBench {
  if (here !== null) return here
  const { kit, fileName, question, searching } = readKeptKit(store)
  const box = createKitBox(kit ?? emptyKit(words.mine), fileName)
  const finder = createFinder(workersHere(), spawnWorker, { question, cutOff: searching }, watchSleep)
  let kept = true
  const keep = () => {
    const { kit: now, fileName: name } = box.store.getState()
    const { question: asked, running } = finder.store.getState()
    kept = writeKeptKit(store, { kit: now, fileName: name, question: asked, searching: running })
  }
  box.store.subscribe(keep)
  finder.store.subscribe((state, before) => {
    if (state.question !== before.question || state.running !== before.running) keep()
  })
  here = { box, finder, kept: () => kept }
  return here
}
