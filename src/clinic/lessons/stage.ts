import type { FileText } from "../../describe/fileText"
import { readouts } from "../../describe/readouts"
import { twinKey } from "../../scene/address"
import { type PathStep, type Result, type SceneError, success } from "../../scene/errors"
import { rangeMessage } from "../../scene/messages"
import type { Scene } from "../../scene/schema"
import { slotNamed } from "../../scene/slots"
import { lessonFaults } from "../../words/lessonFaults"
import { localNumber } from "../../words/numbers"
import type { Language } from "../../words/language"
import { formsOf, holds, numberOf } from "./claims"
import { changedSetup, Fault, faultAt } from "./setups"
import { lessonRead, stepRead } from "./reading"
import type { ChoiceInFile, Claim, Lesson, LessonFile, LessonStep, SetupChange, StepInFile } from "./schema"
import { placeholderFaults, type Setup, type Spoken } from "./placeholders"

/** A step with its setups worked out. */
export interface StagedStep {
  readonly step: LessonStep
  /** What stands on the bench when the step comes up. */
  readonly asked: Spoken
  /** What a prediction comes to: the changed setup, the one before it held beside. Null where nothing is asked. */
  readonly answered: Spoken | null
  /** Which choice the numbers bear out; null where nothing is asked. */
  readonly right: number | null
}

/** A lesson that can be shown: every setup is valid, every number named is there, every prediction has one true choice. */
export interface StagedLesson {
  readonly lesson: Lesson
  readonly steps: readonly StagedStep[]
}

/**
 * Works out every setup of a lesson and holds its words and predictions to them.
 *
 * @param scenes the lesson's scenes by the names it gives them
 * @param reading the language it is to be shown in
 * @returns the lesson ready to be shown, or what is wrong with it, one error a step, each with its path
 */
export function stageLesson(
  lesson: LessonFile,
  scenes: ReadonlyMap<string, Scene>,
  reading: Language,
): Result<StagedLesson> {
  const steps: StagedStep[] = []
  const errors: SceneError[] = []
  let last: Scene | null = null
  lesson.steps.forEach((step, index) => {
    // What stands on nothing because the step before failed would only repeat that.
    if (last === null && step.scene === undefined && errors.length > 0) return
    try {
      const staged = stageStep(lesson, step, ["steps", index], last, scenes)
      steps.push({ ...staged, step: stepRead(step, reading) })
      last = (staged.answered ?? staged.asked).now.scene
    } catch (fault) {
      if (!(fault instanceof Fault)) throw fault
      errors.push(...fault.errors)
      last = scenes.get(step.scene ?? "") ?? last
    }
  })
  return errors.length > 0 ? { ok: false, errors } : success({ lesson: lessonRead(lesson, reading), steps })
}

function stageStep(
  lesson: LessonFile,
  step: StepInFile,
  path: readonly PathStep[],
  last: Scene | null,
  scenes: ReadonlyMap<string, Scene>,
): Omit<StagedStep, "step"> {
  const made = (change: SetupChange, from: Scene | null, at: readonly PathStep[]) =>
    changedSetup(change, from, scenes, at)
  const now = made(step, last, path)
  const held = step.held === undefined ? null : made(step.held, now.scene, [...path, "held"])
  const { predict, goal } = step
  const after = predict && made(predict.next, now.scene, [...path, "predict", "next"])
  const more = { ...(after && { next: after }), ...(goal && { goal }) }
  const asked: Spoken = { now, held, ...more }
  const answered: Spoken | null = after === undefined ? null : { ...more, now: after, held: now }
  checkWords(step.say, asked, [...path, "say"])
  let right: number | null = null
  if (predict !== undefined && answered !== null) {
    right = trueChoice(predict.choices, now, answered.now, [...path, "predict", "choices"])
    predict.choices.forEach(({ reply }, index) => {
      checkWords(reply, answered, [...path, "predict", "choices", index, "reply"])
    })
  }
  const end = answered ?? asked
  step.numbers?.forEach((key, index) => {
    if (numberOf(end.now.figures, key) === null) throw noNumber([...path, "numbers", index], key)
  })
  if (goal !== undefined) {
    const { of, between, reply } = goal
    if (!step.touch) throw faultAt([...path, "goal"], lessonFaults.untouched)
    checkSpan(between, [...path, "goal", "between"])
    if (numberOf(end.now.figures, of) === null) throw noNumber([...path, "goal", "of"], of)
    checkWords(reply, end, [...path, "goal", "reply"])
  }
  if (step.touch) checkControl(lesson, end.now.scene)
  return { asked, answered, right }
}

const noNumber = (path: readonly PathStep[], key: string): Fault => faultAt(path, lessonFaults.keyEmpty(key))

/** In every language that the file has, whoever reads it here. */
function checkWords(text: FileText, spoken: Spoken, path: readonly PathStep[]): void {
  if (typeof text !== "string") {
    for (const [language, one] of Object.entries(text)) checkWords(one, spoken, [...path, language])
    return
  }
  const [first] = placeholderFaults(text, spoken)
  if (first !== undefined) throw faultAt(path, first)
}

function checkSpan([from, to]: readonly [number, number], path: readonly PathStep[]): void {
  if (to < from) throw faultAt([...path, 1], lessonFaults.spanTurned(String(to), String(from)))
}

/** The one choice that the numbers bear out. */
function trueChoice(choices: readonly ChoiceInFile[], before: Setup, after: Setup, path: readonly PathStep[]): number {
  const borneOut = (claim: Claim, at: readonly PathStep[]): boolean => {
    if (formsOf(claim) !== 1) throw faultAt(at, lessonFaults.oneForm)
    for (const form of ["times", "changes"] as const) {
      const span = claim[form]
      if (span !== undefined) checkSpan(span, [...at, form])
    }
    const [was, is] = [before, after].map(({ figures }) => numberOf(figures, claim.of))
    if (was == null || is == null) throw noNumber([...at, "of"], claim.of)
    return holds(claim, was, is)
  }
  const borne = choices.flatMap((choice, index) =>
    choice.if.map((claim, at) => borneOut(claim, [...path, index, "if", at])).every(Boolean) ? [index] : [],
  )
  if (borne.length === 1) return borne[0]!
  const told = [...new Set(choices.flatMap((choice) => choice.if.map(({ of }) => of)))].map((key) => {
    const [was, is] = [before, after].map(({ figures }) => numberOf(figures, key))
    return lessonFaults.goes(readouts[key].label, shortly(was!), shortly(is!))
  })
  const { noneTrue, moreTrue } = lessonFaults
  throw faultAt(path, borne.length === 0 ? noneTrue(...told) : moreTrue(String(borne.length), ...told))
}

const shortly = (value: number): string => localNumber(String(Number(value.toPrecision(4))))

/** The number that may be touched stands in the setup, within the span the lesson gives it. */
function checkControl({ control }: Pick<LessonFile, "control">, scene: Scene): void {
  const slot = slotNamed(scene, control.of)
  if (slot === undefined) throw faultAt(["control", "of"], lessonFaults.keyUnknown(control.of))
  const { from, to } = controlSpan(control, slot.field)
  for (const key of ["from", "to"] as const) {
    const given = control[key]
    if (given !== undefined && (given < slot.field.min || given > slot.field.max)) {
      throw faultAt(["control", key], rangeMessage(slot.field, given))
    }
  }
  if (from >= to) throw faultAt(["control", "to"], lessonFaults.controlTurned(String(to), String(from)))
  if (slot.value < from || slot.value > to) {
    throw faultAt(["control"], lessonFaults.controlOutside(String(from), String(to), String(slot.value)))
  }
}

/** The ends of what the student may set, in the file's unit: the lesson's, else the field's own. */
export const controlSpan = ({ from, to }: Lesson["control"], field: { min: number; max: number }) => ({
  from: from ?? field.min,
  to: to ?? field.max,
})

/** What may be touched in the picture: the control, and the same number on the other arm of a V-bar. */
export function touchable({ control }: Pick<LessonFile, "control">): readonly string[] {
  const twin = twinKey(control.of)
  return twin === null ? [control.of] : [control.of, twin]
}
