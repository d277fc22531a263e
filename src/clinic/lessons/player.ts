import { createStore, type StoreApi } from "zustand/vanilla"
import { type Bench, type CameraPreset, createBench } from "../../state/bench"
import { NO_HISTORY } from "../../state/history"
import type { Preferences } from "../../state/preferences"
import { type StagedLesson, type StagedStep, touchable } from "./stage"

/** What was foretold at a step: the index of a choice, or null where the answer was shown without one. */
export type Foretold = number | null

export interface PlayerState {
  /** Index of the step that is shown. */
  readonly at: number
  /** By the index of the step; a step that is not there has not been answered. */
  readonly answers: ReadonlyMap<number, Foretold>
}

/**
 * A lesson being shown. It has a bench of its own, so that nothing on the coach's bench, its history or what the
 * browser keeps of it knows of the lesson.
 */
export interface Player {
  readonly staged: StagedLesson
  readonly bench: Bench
  readonly store: StoreApi<PlayerState>
  /** Shows the answer where one is still open, else the next step. */
  forward(): void
  /** The step before, as the lesson has it and with the answer given there. */
  back(): void
  /** Foretells by the index of a choice, once a step. */
  answer(choice: number): void
}

/** Starts a lesson at its first step, in the coach's units. The target of its bow is not what it is about. */
export function createPlayer(staged: StagedLesson, preferences: Preferences): Player {
  const { lesson, steps } = staged
  const show = { ...preferences.show, target: false }
  const bench = createBench(steps[0]!.asked.now.scene, { ...preferences, pairArms: true, show })
  const store = createStore<PlayerState>(() => ({ at: 0, answers: new Map() }))
  const { getState } = store

  /** Puts a setup of the lesson on its bench. What the student did in a step can be undone; the steps themselves not. */
  const put = () => {
    const { at } = getState()
    const { step } = steps[at]!
    const { now, held } = shownSetups(staged, getState())
    bench.cancel()
    bench.load(step.heading, now.scene, { fileName: null, saved: true })
    bench.setView({
      compared: held && { name: held.scene.name, scene: held.scene, inItsOwnPose: true },
      camera: looks(steps, at),
      touchable: step.touch && !isOpen(staged, getState()) ? touchable(lesson) : [],
    })
    bench.store.setState({ history: NO_HISTORY })
  }
  const go = (changes: Partial<PlayerState>) => {
    store.setState(changes)
    put()
  }
  const answer = (choice: Foretold) => {
    const { at, answers } = getState()
    if (isOpen(staged, getState())) go({ answers: new Map(answers).set(at, choice) })
  }

  put()
  return {
    staged,
    bench,
    store,
    answer,
    forward() {
      const { at } = getState()
      if (isOpen(staged, getState())) answer(null)
      else if (at + 1 < steps.length) go({ at: at + 1 })
    },
    back() {
      const { at } = getState()
      if (at > 0) go({ at: at - 1 })
    },
  }
}

/** Whether the step shown asks for a prediction that has not been answered. */
export const isOpen = ({ steps }: StagedLesson, { at, answers }: PlayerState): boolean =>
  steps[at]!.answered !== null && !answers.has(at)

/** The setups that the step shown speaks of: those before its answer while that is open. */
export const shownSetups = (staged: StagedLesson, state: PlayerState) => {
  const { asked, answered } = staged.steps[state.at]!
  return answered === null || isOpen(staged, state) ? asked : answered
}

/** Large numbers and the side looked from stay as they were until a step names others. */
const lastNamed = <K extends "numbers" | "look">(steps: readonly StagedStep[], at: number, key: K) =>
  steps.slice(0, at + 1).findLast(({ step }) => step[key] !== undefined)?.step[key]

const looks = (steps: readonly StagedStep[], at: number): CameraPreset => lastNamed(steps, at, "look") ?? "side"

/** The report keys of the numbers shown large at a step. */
export const numbersAt = ({ steps }: StagedLesson, at: number) => lastNamed(steps, at, "numbers") ?? []
