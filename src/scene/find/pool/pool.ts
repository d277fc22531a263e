import { Best, type Found } from "../../../core/find"
import type { SceneError } from "../../errors"
import type { FoundSetup } from "../answers"
import type { Miss } from "../misses"
import { spaceErrors } from "../spaceErrors"
import type { Asked, Order, Report, Task } from "./messages"

/** A worker as the pool sees it, wherever it runs. */
export interface WorkerPort {
  post(order: Order): void
  /** Ends it at once, in the middle of whatever it does. */
  end(): void
}

/** Starts a worker; `onReport` hears what it says, `onDeath` that it will say nothing more, with the reason. */
export type Spawn = (onReport: (report: Report) => void, onDeath: (reason: string) => void) => WorkerPort

export interface Progress {
  readonly combinations: number
  readonly covered: number
  /** The best so far, best first. */
  readonly setups: readonly FoundSetup[]
  /** Why each worker was lost that was; others do its work again. */
  readonly lost: readonly string[]
}

export type Outcome =
  | { readonly kind: "refused"; readonly errors: readonly SceneError[] }
  | (Progress & {
      readonly kind: "searched"
      /** Every setup was dealt with: the list is what plain enumeration would give. */
      readonly proved: boolean
      /** Why not, where it was not asked to stop. */
      readonly trouble: string | null
      /** With no setup found and all dealt with: how near each limit can be come to. */
      readonly misses: readonly Miss[]
    })

export interface RunningFind {
  /** Ends the search with the best so far. */
  cancel(): void
}

/** Tasks wanted for each worker, so that none waits long for the last one. */
const TASKS_PER_WORKER = 12
/** Replacements for workers that died; a kit that kills so many is not going to be searched. */
const MOST_DEATHS = 3

interface Hand {
  readonly port: WorkerPort
  task: Task | null
  /** Setups dealt with in its present task. */
  covered: number
  ready: boolean
}

/**
 * Runs a search on `workers` workers. `onProgress` is told whenever something has changed, `onEnd` once. A worker that
 * dies is replaced and its task done again, since every task gives the same whoever does it.
 */
export function startFind(
  asked: Asked,
  workers: number,
  spawn: Spawn,
  onProgress: (progress: Progress) => void,
  onEnd: (outcome: Outcome) => void,
): RunningFind {
  const hands = new Set<Hand>()
  const best = new Best(asked.question.count)
  const setups = new Map<number, FoundSetup>()
  const misses = new Map<number, Miss>()
  let tasks: Task[] | null = null
  let limits = 0
  let combinations = 0
  let covered = 0
  const lost: string[] = []
  let ended = false

  const progress = (): Progress => ({
    combinations,
    covered: covered + [...hands].reduce((sum, hand) => sum + hand.covered, 0),
    setups: best.list.map(({ order }) => setups.get(order)!),
    lost: [...lost],
  })
  const end = (outcome: Outcome) => {
    ended = true
    for (const { port } of hands) port.end()
    hands.clear()
    onEnd(outcome)
  }
  const finish = (trouble: string | null) => {
    const at = progress()
    const inOrder = [...misses].sort(([a], [b]) => a - b).map(([, miss]) => miss)
    const proved = trouble === null && tasks !== null && at.covered === combinations
    end({ kind: "searched", ...at, proved, trouble, misses: inOrder })
  }

  const merge = (from: Hand, found: readonly Found[], fresh: readonly FoundSetup[]) => {
    for (const setup of fresh) setups.set(setup.order, setup)
    const before = best.order
    for (const each of found) best.offer(each)
    for (const order of setups.keys()) {
      if (!best.list.some((each) => each.order === order)) setups.delete(order)
    }
    const last = demand()
    if (last === null || best.order === before) return
    for (const hand of hands) if (hand !== from) hand.port.post({ kind: "demand", demand: last })
  }
  const demand = (): Found | null => (best.list.length === best.count ? (best.list.at(-1) ?? null) : null)

  /** Gives every idle worker a task; ends the search when nothing is left to give and nobody works. */
  const deal = () => {
    if (tasks === null || ended) return
    for (const hand of hands) {
      if (!hand.ready || hand.task !== null) continue
      const task = tasks.shift()
      if (task === undefined) break
      hand.task = task
      hand.port.post({ kind: "take", task, demand: demand() })
    }
    if (tasks.length > 0 || [...hands].some(({ task }) => task !== null)) return
    if (best.list.length > 0 || misses.size > 0 || limits === 0) return finish(null)
    tasks = Array.from({ length: limits }, (_, limit): Task => ({ kind: "miss", limit }))
    limits = 0
    deal()
  }

  const hear = (hand: Hand, report: Report) => {
    if (ended || !hands.has(hand) || report.kind === "alive") return
    switch (report.kind) {
      case "refused":
        return end({ kind: "refused", errors: spaceErrors(report.fault) })
      case "ready":
        hand.ready = true
        if (tasks === null) {
          ;({ combinations, covered, limits } = report)
          tasks = tasksOf(report.trunks, workers)
        }
        break
      case "progress":
        hand.covered = report.covered
        merge(hand, report.found, report.setups)
        break
      case "done":
        covered += report.covered
        hand.covered = 0
        hand.task = null
        merge(hand, report.found, report.setups)
        break
      case "missed":
        if (hand.task?.kind === "miss") misses.set(hand.task.limit, report.miss)
        hand.task = null
        break
    }
    if (report.kind !== "missed") onProgress(progress())
    deal()
  }

  const start = () => {
    const hand: Hand = {
      port: spawn(
        (report) => hear(hand, report),
        (reason) => lose(hand, reason),
      ),
      task: null,
      covered: 0,
      ready: false,
    }
    hands.add(hand)
    hand.port.post({ kind: "ask", asked })
  }

  const lose = (hand: Hand, reason: string) => {
    if (ended || !hands.delete(hand)) return
    hand.port.end()
    if (hand.task !== null) tasks?.unshift(hand.task)
    lost.push(reason)
    if (lost.length <= MOST_DEATHS) start()
    else if (hands.size === 0) return finish(reason)
    onProgress(progress())
    deal()
  }

  for (let count = 0; count < workers; count++) start()
  return {
    cancel() {
      if (!ended) finish(null)
    },
  }
}

/** The trunks in parts, enough for all workers; parts of one trunk stand together, since a trunk takes preparing. */
function tasksOf(trunks: readonly number[], workers: number): Task[] {
  const parts = Math.max(1, Math.ceil((workers * TASKS_PER_WORKER) / Math.max(1, trunks.length)))
  return trunks.flatMap((trunk) =>
    Array.from({ length: parts }, (_, part): Task => ({ kind: "part", trunk, part, parts })),
  )
}
