import type { Evaluation } from "../scene/evaluate"
import { type Figures, figuresOf } from "../scene/figures"
import type { MeasureResult, Spreads } from "../scene/measure"
import type { Scene } from "../scene/schema"
import { localNumber } from "../words/numbers"
import { setupCard as words } from "../words/setupCard"
import {
  forwardVerdict,
  massVerdict,
  netLiftVerdict,
  netLiftWords,
  type Span,
  sideVerdict,
  spanText,
  upVerdict,
  type Verdict,
  withSpread,
} from "./balanceText"
import { fixed, said, type UnitChoice } from "./format"
import { spreadText, unknownWords } from "./measureText"
import { short } from "./placeWords"
import { type ReadoutKey, readouts } from "./readouts"

/** A line of figures: what it is, the number with its unit, and its ± or what it means. */
export interface CardLine {
  readonly key: string
  readonly label: string
  readonly value: string
  readonly note: string
}

const heldKeys: readonly ReadoutKey[] = [
  "massG",
  "centreMm.forward",
  "centreMm.up",
  "centreMm.side",
  "noseDownNm",
  "inertiaGrip.pitch",
  "inertiaGrip.yaw",
  "inertiaGrip.roll",
]
const drawnKeys: readonly ReadoutKey[] = [
  "fullDraw.holdForceN",
  "fullDraw.liftNm",
  "fullDraw.noseDownNm",
  "fullDraw.netLiftNm",
  "fullDraw.balancedForwardMm",
  "fullDraw.centreMm.forward",
  "fullDraw.massG",
]

const turning = {
  "inertiaGrip.pitch": { axis: 2, label: words.turning.pitch },
  "inertiaGrip.yaw": { axis: 1, label: words.turning.yaw },
  "inertiaGrip.roll": { axis: 0, label: words.turning.roll },
} as const

/** The figures at brace, level. */
export const cardHeld = (evaluation: Evaluation, spreads: Spreads | null, units: UnitChoice): readonly CardLine[] =>
  linesOf(heldKeys, figuresOf(evaluation), spreads, units)

/** The figures at full draw, level. */
export const cardDrawn = (evaluation: Evaluation, spreads: Spreads | null, units: UnitChoice): readonly CardLine[] =>
  linesOf(drawnKeys, figuresOf(evaluation), spreads, units)

function linesOf(
  keys: readonly ReadoutKey[],
  figures: Figures,
  spreads: Spreads | null,
  units: UnitChoice,
): readonly CardLine[] {
  return keys.map((key) => {
    const { label, quantity, of } = readouts[key]
    const value = of(figures) ?? Number.NaN
    const turn = key in turning ? turning[key as keyof typeof turning] : null
    const notes = [
      spreadText(spreads?.[key], quantity, units),
      key === "fullDraw.netLiftNm" ? netLiftWords(value) : "",
      turn === null ? "" : words.timesBare(fixed(value / figures.stripped.inertiaGrip[turn.axis][turn.axis], 2)),
    ]
    return {
      key,
      label: turn?.label ?? label,
      value: said(value, quantity, units),
      note: notes.filter((note) => note !== "").join(", "),
    }
  })
}

/** Each aim of the setup with how it stands against it; none without an aim. */
export function cardTarget(evaluation: Evaluation, spreads: Spreads | null, units: UnitChoice): readonly CardLine[] {
  const { target } = evaluation.scene
  const { centreMm, massG, fullDraw } = figuresOf(evaluation)
  const line = (key: ReadoutKey, value: string, verdict: Verdict, inside: string, assumed: string): CardLine[] => {
    if (verdict.target === null) return []
    const open = withSpread(verdict, spreads?.[key])
    const met = open.standing === verdict.standing ? inside : assumed
    return [{ key, label: readouts[key].label, value, note: verdict.standing === "inside" ? met : open.words }]
  }
  const span = (key: ReadoutKey, aim: Span | undefined, verdict: Verdict): CardLine[] =>
    aim === undefined
      ? []
      : line(key, spanText(aim, readouts[key].quantity, units), verdict, words.inside, words.insideAssumed)
  const mass = massVerdict(massG, target.massMaxG, units)
  return [
    ...span("centreMm.forward", target.forwardMm, forwardVerdict(centreMm[0], target.forwardMm, units)),
    ...span("centreMm.up", target.upMm, upVerdict(centreMm[1], target.upMm, units)),
    ...span("centreMm.side", target.sideMm, sideVerdict(centreMm[2], target.sideMm, units)),
    ...span("fullDraw.netLiftNm", target.netLiftNm, netLiftVerdict(fullDraw.netLiftNm, target.netLiftNm, units)),
    ...line("massG", mass.target ?? "", mass, words.within, words.withinAssumed),
  ]
}

/** "Recurve, 40 lbf, draw length 665 mm, brace height 220 mm, nock height 48 mm, right-handed": the bow in a line. */
export function cardBow({ bow }: Scene, units: UnitChoice): string {
  const length = (mm: number) => short(mm, "length", units)
  const force = short(bow.drawWeightLbf, "force", units)
  return [
    bow.kind === "compound" ? words.compound : words.recurve,
    bow.kind === "compound" ? words.peak(force, `${localNumber(String(bow.letOffPercent))}\u00a0%`) : force,
    words.drawLength(length(bow.drawLengthMm)),
    words.braceHeight(length(bow.braceHeightMm)),
    words.nockHeight(length(bow.nockHeightMm)),
    bow.hand === "right" ? words.rightHanded : words.leftHanded,
  ].join(", ")
}

/** "Sight 230 g; plunger 22 g": what else is on the bow; empty without accessories. */
export const cardAccessories = ({ accessories }: Scene, units: UnitChoice): string =>
  accessories.map(({ name, massG }) => `${name} ${short(massG, "mass", units)}`).join(words.between)

/** Whether the numbers are those of the real bow, in a sentence or two. `result` is null where nothing was read. */
export function cardMeasured({ measurements }: Scene, result: MeasureResult | null): string {
  const given = measurements?.length ?? 0
  if (given === 0 || result === null) return `${words.unread} ${words.elbow}`
  const count = result.readings.length
  if (!result.fit.applied) return `${words.unused(count, String(count))} ${words.elbow}`
  const open = (Object.keys(unknownWords) as (keyof typeof unknownWords)[]).filter(
    (name) => result.known[name] !== "yes",
  )
  return [
    words.measured(count, String(count)),
    ...(open.length === 0 ? [] : [words.assumed(open.map((name) => unknownWords[name]).join(", "))]),
    words.entered,
    words.elbow,
  ].join(" ")
}
