/** Every lesson that comes with the bench can be held: its words, predictions and goals are borne out by the numbers. */
import { describe, expect, test } from "vitest"
import { numberOf, within } from "../../src/clinic/lessons/claims"
import type { FileText } from "../../src/describe/fileText"
import { filled } from "../../src/clinic/lessons/placeholders"
import type { LessonFile } from "../../src/clinic/lessons/schema"
import { controlSpan, touchable } from "../../src/clinic/lessons/stage"
import { evaluate } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import { slotNamed } from "../../src/scene/slots"
import { withValues } from "../../src/scene/suggest"
import { defaultPreferences } from "../../src/state/preferences"
import { lessonIds, lessonText, shippedLesson } from "./shippedLessons"

/** The numbers a text speaks of, in the order of their names: the languages need not say them in one order. */
const placeholders = (text: string) => [...text.matchAll(/\{[^{}]*\}/g)].map(([one]) => one).sort()

test("at least eight lessons are shipped", () => {
  expect(lessonIds.length).toBeGreaterThanOrEqual(8)
})

describe.each(lessonIds)("%s", (id) => {
  test("says that it is invented, asks a prediction before it lets anything be touched, and ends with something to do", async () => {
    const { lesson, steps } = await shippedLesson(id)
    expect(lesson.notes).toMatch(/invented/)
    const asks = steps.findIndex(({ right }) => right !== null)
    const touches = steps.findIndex(({ step }) => step.touch)
    expect(asks).toBeGreaterThanOrEqual(0)
    expect(touches).toBeGreaterThan(asks)
    expect(steps.at(-1)?.step.goal).toBeDefined()
  })

  test("has a number for every placeholder, in what it says and in every reply", async () => {
    for (const language of ["en", "fr"] as const) {
      const { steps } = await shippedLesson(id, language)
      for (const { step, asked, answered } of steps) {
        const texts = [
          filled(step.say, asked, defaultPreferences),
          ...(step.predict?.choices.map(({ reply }) => filled(reply, answered!, defaultPreferences)) ?? []),
        ]
        for (const text of texts) expect(text).not.toMatch(/[{}–]|NaN|undefined/)
      }
    }
  })

  test("says everything in both languages, each with the same numbers", () => {
    const { name, about, steps } = JSON.parse(lessonText(id)) as LessonFile
    const texts: FileText[] = [
      name,
      about,
      ...steps.flatMap(({ heading, say, predict, goal }) => [
        heading,
        say,
        ...(predict === undefined ? [] : [predict.question]),
        ...(predict?.choices.flatMap(({ says, reply }) => [says, reply]) ?? []),
        ...(goal === undefined ? [] : [goal.reply]),
      ]),
    ]
    for (const text of texts) {
      if (typeof text === "string") throw new Error(`only in one language: ${text}`)
      expect(text.fr.trim()).not.toBe("")
      expect(text.fr, "left in English").not.toBe(text.en)
      expect(placeholders(text.fr)).toEqual(placeholders(text.en))
      expect(text.fr, "a space that may break before : ; ! ? %, or a straight apostrophe").not.toMatch(/ [:;!?%»]|« |'/)
    }
  })

  test("has goals that are not met at first and can be met with the one control", async () => {
    const { lesson, steps } = await shippedLesson(id)
    for (const { step, asked } of steps) {
      if (step.goal === undefined) continue
      const { of, between } = step.goal
      expect(within(numberOf(asked.now.figures, of)!, between), "met before anything is touched").toBe(false)
      const { field } = slotNamed(asked.now.scene, lesson.control.of)!
      const { from, to } = controlSpan(lesson.control, field)
      const count = Math.round((to - from) / field.step)
      const meets = Array.from({ length: count + 1 }, (_, index) => from + index * field.step).some((value) => {
        const evaluation = evaluate(
          withValues(
            asked.now.scene,
            touchable(lesson).map((key) => ({ key, value })),
          ),
        )
        return evaluation.ok && within(numberOf(figuresOf(evaluation.value), of)!, between)
      })
      expect(meets, `${of} between ${between.join(" and ")}`).toBe(true)
    }
  })
})
