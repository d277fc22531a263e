import { type Draft, enablePatches, produceWithPatches } from "immer"
import { createStore, type StoreApi } from "zustand/vanilla"
import { type Result, type SceneError, success } from "../scene/errors"
import type { Evaluation } from "../scene/evaluate"
import type { Scene } from "../scene/schema"
import type { OtherSetup } from "./compared"
import { checkScene, type FileRules, standingRules } from "./check"
import {
  type Entry,
  type FileMark,
  type History,
  join,
  NO_HISTORY,
  remember,
  replacement,
  stepBack,
  stepForward,
} from "./history"
import type { LessonAsked } from "./lesson"
import type { Played } from "./played"
import { defaultPreferences, type Preferences } from "./preferences"
import { sameValue } from "./same"
import type { KeptWork } from "./setAside"
import { acts } from "../words/acts"

enablePatches()

export type CameraPreset = "side" | "top" | "archer" | "free"

/** A change in progress: a drag or a held key. It becomes one undo step, or none when it is given up. */
export interface Gesture {
  readonly label: string
  readonly base: Scene
  readonly baseEvaluation: Evaluation
  readonly entry: Entry | null
}

/** Something to tell the coach that is not a number: what was refused, restored or saved. */
export interface Notice {
  readonly tone: "info" | "problem"
  readonly text: string
  /** One line each, with the place in the file. */
  readonly errors: readonly SceneError[]
  /** Something to do about it, as a button. */
  readonly offer?: { readonly label: string; readonly run: () => void }
}

export interface BenchState extends FileMark {
  readonly scene: Scene
  /** Always that of `scene`. */
  readonly evaluation: Evaluation
  readonly history: History
  readonly gesture: Gesture | null
  readonly preferences: Preferences
  /** Held beside the setup on the bench, to be compared with it; see `beside`. */
  readonly compared: OtherSetup | null
  /** Looked at in a list for the moment. */
  readonly peeked: OtherSetup | null
  readonly selected: string | null
  readonly hovered: string | null
  readonly camera: CameraPreset
  /** A motion shown in the picture alone; see `playedNow`. */
  readonly played: Played | null
  /** The only numbers that have handles in the picture, by their slots' keys; null for all. */
  readonly touchable: readonly string[] | null
  /** The lesson that lies over the bench, or the list of them. */
  readonly lesson: LessonAsked | null
  readonly notice: Notice | null
  /** The last thing done, for the live region; counts up so that doing the same twice is said twice. */
  readonly said: { readonly text: string; readonly count: number }
}

/** Where a scene that is put on the bench comes from, and what then lies beside it: as before, if left out. */
export interface Loaded {
  readonly fileName: string | null
  /** Whether the file holds the scene as it is. */
  readonly saved: boolean
  readonly setAside?: readonly KeptWork[]
}

export type Recipe = (draft: Draft<Scene>) => void

/**
 * The one owner of the scene. Every change goes through `change`, which refuses whatever would not be a valid scene
 * and leaves the present one alone. Reading is through `store`.
 */
export interface Bench {
  readonly store: StoreApi<BenchState>
  /**
   * Applies a recipe. A refusal changes nothing and returns the errors. Outside a gesture it is one undo step. `rules`
   * are the whole file's unless given; `standingRules` suffice for a recipe that puts numbers it has seen to be in range.
   */
  change(label: string, recipe: Recipe, rules?: FileRules): Result<void>
  /** Starts a gesture; one already open is kept first. */
  begin(label: string): void
  /** Keeps the gesture as one undo step; one that ends where it began is none. */
  commit(): void
  /** Gives the gesture up: the scene is what it was before. */
  cancel(): void
  undo(): void
  redo(): void
  /** Puts another scene on the bench as one undo step, so that opening the wrong file loses nothing. */
  load(label: string, scene: Scene, file: Loaded): Result<void>
  /** Sets what lies beside the bench, as one undo step. */
  keepAside(label: string, setAside: readonly KeptWork[]): Result<void>
  markSaved(fileName: string): void
  setPreferences(changes: Partial<Preferences>): void
  setView(
    changes: Partial<
      Pick<
        BenchState,
        "compared" | "peeked" | "selected" | "hovered" | "camera" | "played" | "touchable" | "lesson" | "notice"
      >
    >,
  ): void
  say(text: string): void
}

/**
 * A bench with a first scene; throws RangeError when that is not valid (shipped scenes are, files come through `load`).
 * `rules` are the file's rules as far as they are at hand; see check.ts.
 */
export function createBench(
  scene: Scene,
  preferences: Preferences = defaultPreferences,
  rules: FileRules = standingRules,
): Bench {
  const check = (candidate: Scene, kept = rules) => checkScene(candidate, kept)
  const first = check(scene)
  if (!first.ok)
    throw new RangeError(`the first scene is not valid: ${first.errors[0]?.path} ${first.errors[0]?.message}`)
  const store = createStore<BenchState>(() => ({
    scene,
    evaluation: first.value,
    history: NO_HISTORY,
    gesture: null,
    savedScene: scene,
    fileName: null,
    setAside: [],
    preferences,
    compared: null,
    peeked: null,
    selected: null,
    hovered: null,
    camera: "side",
    played: null,
    touchable: null,
    lesson: null,
    notice: null,
    said: { text: "", count: 0 },
  }))
  const { getState, setState } = store

  const say = (text: string) => setState(({ said }) => ({ said: { text, count: said.count + 1 } }))

  const change: Bench["change"] = (label, recipe, kept) => {
    const state = getState()
    const [scene, forward, backward] = produceWithPatches(state.scene, recipe)
    if (forward.length === 0) return success(undefined)
    const checked = check(scene, kept)
    if (!checked.ok) return checked
    const entry: Entry = { label, forward, backward }
    const { gesture } = state
    if (gesture === null) {
      setState({ scene, evaluation: checked.value, history: remember(state.history, entry) })
    } else {
      const joined = gesture.entry === null ? entry : join(gesture.entry, entry)
      setState({ scene, evaluation: checked.value, gesture: { ...gesture, entry: joined } })
    }
    return success(undefined)
  }

  const commit = () => {
    const { gesture, history, scene } = getState()
    if (gesture === null) return
    if (gesture.entry === null || sameValue(scene, gesture.base)) cancel()
    else setState({ gesture: null, history: remember(history, { ...gesture.entry, label: gesture.label }) })
  }

  const cancel = () => {
    const { gesture } = getState()
    if (gesture !== null) setState({ gesture: null, scene: gesture.base, evaluation: gesture.baseEvaluation })
  }

  const walk = (step: typeof stepBack, side: "before" | "after", done: (change: string) => string) => {
    commit()
    const state = getState()
    const walked = step(state.history, state.scene)
    if (walked === null) return
    const checked = check(walked.scene)
    // Every scene in the history was valid when it was left, so this cannot fail; if it does, nothing moves.
    if (!checked.ok) return
    const { scene, history, entry } = walked
    setState({ ...entry.file?.[side], scene, evaluation: checked.value, history })
    say(done(entry.label))
  }

  return {
    store,
    change,
    begin(label) {
      commit()
      const { scene, evaluation } = getState()
      setState({ gesture: { label, base: scene, baseEvaluation: evaluation, entry: null } })
    },
    commit,
    cancel,
    undo: () => walk(stepBack, "before", acts.undone),
    redo: () => walk(stepForward, "after", acts.redone),
    load(label, scene, { fileName, saved, setAside }) {
      const checked = check(scene)
      if (!checked.ok) return checked
      commit()
      const { scene: from, history, fileName: oldName, savedScene, setAside: lay } = getState()
      const before: FileMark = { fileName: oldName, savedScene, setAside: lay }
      const after: FileMark = { fileName, savedScene: saved ? scene : null, setAside: setAside ?? lay }
      const entry = replacement(label, from, scene, { before, after })
      const blank = { selected: null, hovered: null }
      setState({ ...after, ...blank, scene, evaluation: checked.value, history: remember(history, entry) })
      return success(undefined)
    },
    keepAside(label, setAside) {
      commit()
      const { history, setAside: before } = getState()
      const file = { before: { setAside: before }, after: { setAside } }
      setState({ setAside, history: remember(history, { label, forward: [], backward: [], file }) })
      return success(undefined)
    },
    markSaved(fileName) {
      setState(({ scene }) => ({ savedScene: scene, fileName }))
    },
    setPreferences(changes) {
      setState(({ preferences }) => ({ preferences: { ...preferences, ...changes } }))
    },
    setView: (changes) => setState(changes),
    say,
  }
}

/** Compares what the scenes say, so that undoing back to the file's scene is no change to it. */
export const hasUnsavedChanges = ({ scene, savedScene }: BenchState): boolean => !sameValue(scene, savedScene)
