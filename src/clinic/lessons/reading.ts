import { fileText } from "../../describe/fileText"
import type { Language } from "../../words/language"
import type { Lesson, LessonFile, LessonStep, StepInFile } from "./schema"

/** A lesson with what it says in the language of its reader. */
export const lessonRead = (lesson: LessonFile, reading: Language): Lesson => ({
  ...lesson,
  name: fileText(lesson.name, reading),
  about: fileText(lesson.about, reading),
  steps: lesson.steps.map((step) => stepRead(step, reading)),
})

/** One step of it. */
export function stepRead(step: StepInFile, reading: Language): LessonStep {
  const { predict, goal } = step
  const choices = predict?.choices.map((choice) => ({
    ...choice,
    says: fileText(choice.says, reading),
    reply: fileText(choice.reply, reading),
  }))
  return {
    ...step,
    heading: fileText(step.heading, reading),
    say: fileText(step.say, reading),
    predict: predict && { ...predict, question: fileText(predict.question, reading), choices: choices! },
    goal: goal && { ...goal, reply: fileText(goal.reply, reading) },
  }
}
