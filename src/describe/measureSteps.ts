import type { Measurement } from "../scene/schema"
import { readingSteps } from "../words/readingSteps"
import { fixed } from "./format"

/** What a coach is told of one kind of reading before taking it. */
export interface StepWords {
  /** On the switch: one word. */
  readonly verb: string
  readonly how: readonly string[]
  readonly tells: string
  /** How close such a reading usually is. Common practice, no source. */
  readonly usual: string
}

const { scale, hang, swing, twist } = readingSteps

export const stepWords: Readonly<Record<Measurement["kind"], StepWords>> = {
  scale: { ...scale, how: Object.values(scale.how) },
  hang: { ...hang, how: Object.values(hang.how) },
  swing: { ...swing, how: Object.values(swing.how) },
  twist: { ...twist, how: Object.values(twist.how) },
}

/** What tapping has come to, in a line. */
export function tappedText(count: number, seconds: number, missed: number, doubled: number): string {
  const asides = [
    ...(missed > 0 ? [readingSteps.missed(missed)] : []),
    ...(doubled > 0 ? [readingSteps.doubled(doubled)] : []),
  ]
  const all = readingSteps.tapped(count, fixed(seconds, 2), fixed(seconds / count, 3))
  return asides.length === 0 ? all : `${all} (${asides.join(readingSteps.between)})`
}
