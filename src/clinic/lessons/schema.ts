/**
 * The lesson file, version 1. Strict everywhere, like the scene's. What the keys mean together (a claim's one form,
 * numbers that a setup has, one true choice) is checked in `stage.ts`, where the setups are at hand.
 */
import * as z from "zod/mini"
import type { FileText } from "../../describe/fileText"
import { type ReadoutKey, readouts } from "../../describe/readouts"
import { text } from "../../scene/schemaNumbers"
import type { Language } from "../../words/language"

export const LESSON_FORMAT = "bow-balance-bench-lesson"
export const LESSON_VERSION = 1

const MAX_STEPS = 20
const MAX_CHOICES = 5
/** More numbers than this are no longer one idea. */
const MAX_NUMBERS = 3

const key = z.string().check(z.minLength(1), z.maxLength(160))

/** What is said: one text, or one in each language. The order is that in which `parse.ts` looks for what is wrong. */
const said = (most: number) => {
  const text = z.string().check(z.minLength(1), z.maxLength(most))
  return z.union([text, z.strictObject({ en: text, fr: text } satisfies Record<Language, unknown>)])
}
const line = said(160)
/** Plain words; `{now massG}` and its like stand for numbers, see `placeholders.ts`. */
const words = said(800)
const report = z.enum(Object.keys(readouts) as [ReadoutKey, ...ReadoutKey[]])
const span = z.tuple([z.number(), z.number()])

/** A setup, by changes to another: which scene, then numbers of it by their slots' keys, in the file's units. */
const setup = z.strictObject({
  scene: z.optional(key),
  set: z.optional(z.record(z.string(), z.number())),
})

/** Something a number does between two setups: in one of the three forms. */
const claim = z.strictObject({
  of: report,
  becomes: z.optional(z.enum(["more", "less", "alike"])),
  times: z.optional(span),
  changes: z.optional(span),
})

const choice = z.strictObject({
  says: line,
  if: z.array(claim).check(z.minLength(1), z.maxLength(4)),
  reply: words,
})

const step = z.strictObject({
  heading: line,
  say: words,
  ...setup.shape,
  held: z.optional(setup),
  look: z.optional(z.enum(["side", "top", "archer", "free"])),
  numbers: z.optional(z.array(report).check(z.minLength(1), z.maxLength(MAX_NUMBERS))),
  predict: z.optional(
    z.strictObject({
      question: line,
      choices: z.array(choice).check(z.minLength(2), z.maxLength(MAX_CHOICES)),
      next: setup,
    }),
  ),
  touch: z._default(z.boolean(), false),
  goal: z.optional(z.strictObject({ of: report, between: span, reply: words })),
})

export const lessonSchema = z.strictObject({
  format: z.literal(LESSON_FORMAT),
  version: z.literal(LESSON_VERSION),
  name: line,
  about: line,
  notes: z._default(text(4000), ""),
  /** A whole scene, or the name of one that comes with the bench. */
  scenes: z.record(z.string(), z.unknown()),
  control: z.strictObject({ of: key, from: z.optional(z.number()), to: z.optional(z.number()) }),
  steps: z.array(step).check(z.minLength(1), z.maxLength(MAX_STEPS)),
})

/** A lesson as its file has it. */
export type LessonFile = z.output<typeof lessonSchema>
export type StepInFile = LessonFile["steps"][number]
export type ChoiceInFile = z.output<typeof choice>

/** The same with each text in the one language of its reader. */
type Read<T> = [T] extends [string]
  ? T
  : [T] extends [FileText]
    ? string
    : T extends object
      ? { [K in keyof T]: Read<T[K]> }
      : T
export type Lesson = Read<LessonFile>
export type LessonStep = Read<StepInFile>
export type Claim = z.output<typeof claim>
export type SetupChange = z.output<typeof setup>
