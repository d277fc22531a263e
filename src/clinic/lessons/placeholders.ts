/** The numbers that stand in a lesson's words. */
import { besideText } from "../../describe/compareText"
import { fieldSaid } from "../../describe/fieldText"
import { fixed, type Shown, said, show, shownUnit, type UnitChoice, withUnit } from "../../describe/format"
import { type ReadoutKey, readouts } from "../../describe/readouts"
import type { Figures } from "../../scene/figures"
import type { Scene } from "../../scene/schema"
import { slotNamed } from "../../scene/slots"
import { lessonFaults } from "../../words/lessonFaults"
import { lessons } from "../../words/lessons"

/** A setup with its numbers. */
export interface Setup {
  readonly scene: Scene
  readonly figures: Figures
}

/** What a lesson's words can speak of. */
export interface Spoken {
  /** The setup on the bench. */
  readonly now: Setup
  /** The one held beside it. */
  readonly held: Setup | null
  /** What the setup is about to become, while that is being foretold: of this only the settings may be said. */
  readonly next?: Setup
  /** What the student is to bring a number to, in the report's unit. */
  readonly goal?: { readonly of: ReadoutKey; readonly between: readonly [number, number] }
}

const PLACEHOLDER = /\{([^{}]*)\}/g
const KINDS = ["now", "held", "change", "times", "next"] as const
type Kind = (typeof KINDS)[number]

interface Measured {
  readonly value: number
  readonly quantity: Shown
  /** As a sentence says it: a setting without needless digits. */
  readonly said: (value: number, quantity: Shown, units: UnitChoice) => string
}

/** A number by its report key or, failing that, by a slot's key; null where the setup has no such number. */
function measured({ scene, figures }: Setup, key: string): Measured | null {
  if (Object.hasOwn(readouts, key)) {
    const { of, quantity } = readouts[key as ReadoutKey]
    const value = of(figures)
    return value === null ? null : { value, quantity, said }
  }
  const slot = slotNamed(scene, key)
  return slot === undefined || slot.absent
    ? null
    : { value: slot.value, quantity: slot.field.quantity, said: fieldSaid }
}

/** Why a placeholder cannot be filled; null when it can. `inside` is what stands between the braces. */
function fault(inside: string, { now, held, next, goal }: Spoken): string | null {
  const given = `{${inside}}`
  if (inside === "goal") return goal === undefined ? lessonFaults.noGoal(given) : null
  const [kind, key, ...rest] = inside.split(" ")
  if (!KINDS.includes(kind as Kind) || key === undefined || rest.length > 0) return lessonFaults.placeholder(given)
  if (kind === "next") {
    if (next === undefined) return lessonFaults.nothingNext(given)
    if (Object.hasOwn(readouts, key)) return lessonFaults.tellsAnswer(given)
  } else if (kind !== "now" && held === null) return lessonFaults.nothingHeld(given)
  const asked = kind === "now" ? [now] : kind === "next" ? [next!] : kind === "held" ? [held!] : [now, held!]
  return asked.every((setup) => measured(setup, key) !== null) ? null : lessonFaults.called(given, key)
}

/** What is wrong with the placeholders of a text; empty when all can be filled. */
export const placeholderFaults = (text: string, spoken: Spoken): string[] =>
  [...text.matchAll(PLACEHOLDER)].map(([, inside]) => fault(inside!, spoken)).filter((one) => one !== null)

/**
 * A lesson's words with their numbers in the chosen units: `{now KEY}`, `{held KEY}`, `{change KEY}` with its sign,
 * `{times KEY}`, the present number as a multiple of the held one, `{next KEY}` and `{goal}`. What cannot be filled is a
 * dash.
 */
export const filled = (text: string, spoken: Spoken, units: UnitChoice): string =>
  text.replace(PLACEHOLDER, (_, inside: string) => {
    if (fault(inside, spoken) !== null) return "–"
    if (inside === "goal") return spanText(spoken.goal!, units)
    const [kind, key] = inside.split(" ") as [Kind, string]
    if (kind === "next" || kind === "now" || kind === "held") {
      const { value, quantity, said } = measured(spoken[kind]!, key)!
      return said(value, quantity, units)
    }
    const now = measured(spoken.now, key)!
    const held = measured(spoken.held!, key)!
    if (kind === "change") {
      return withUnit(
        besideText(now.value, held.value, now.quantity, units).change,
        shownUnit(now.quantity, units).unit,
      )
    }
    return fixed(now.value / held.value, 2)
  })

/** "60.0 to 75.0 mm" */
function spanText({ of, between: [from, to] }: NonNullable<Spoken["goal"]>, units: UnitChoice): string {
  const { quantity } = readouts[of]
  return lessons.span(show(from, quantity, units).text, said(to, quantity, units))
}
