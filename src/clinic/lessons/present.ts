import type { ReadoutKey } from "../../describe/readouts"
import { beside } from "../../state/compared"
import { figures } from "../../state/derived"
import type { BenchState } from "../../state/bench"
import { lessons } from "../../words/lessons"
import { LESSON_FORMAT, LESSON_VERSION, type Lesson, type LessonStep } from "./schema"
import type { StagedLesson } from "./stage"
import type { Setup } from "./placeholders"

/** The steps that show a bow, and their numbers: what a coach would point at, from the plainest on. */
const numbers: Readonly<Record<keyof typeof lessons.ideas, readonly ReadoutKey[]>> = {
  balance: ["centreMm.forward", "centreMm.up"],
  hand: ["massG", "noseDownNm"],
  drawn: ["fullDraw.netLiftNm"],
  turning: ["inertiaGrip.pitch", "inertiaGrip.yaw", "inertiaGrip.roll"],
}

/** The setup on the bench as a lesson that asks nothing: one idea a step, against the held setup if there is one. */
export function presentation(state: BenchState): StagedLesson {
  const { scene } = state
  const other = beside(state)
  const now: Setup = { scene, figures: figures(state) }
  const held: Setup | null =
    other === null ? null : { scene: { ...other.scene, pose: scene.pose }, figures: other.figures }
  const steps = Object.entries(lessons.ideas).map(
    ([idea, { heading, say }]): LessonStep => ({
      heading,
      say,
      numbers: [...numbers[idea as keyof typeof lessons.ideas]],
      touch: false,
    }),
  )
  const lesson: Lesson = {
    format: LESSON_FORMAT,
    version: LESSON_VERSION,
    name: scene.name,
    about: scene.name,
    notes: "",
    scenes: {},
    control: { of: "pose:draw" },
    steps,
  }
  return { lesson, steps: steps.map((step) => ({ step, asked: { now, held }, answered: null, right: null })) }
}
