import type { Evaluation } from "../scene/evaluate"
import { type Figures, figuresOf } from "../scene/figures"
import type { MeasureResult, Spreads } from "../scene/measure"
import type { Scene } from "../scene/schema"
import {
  forwardVerdict,
  massVerdict,
  netLiftVerdict,
  netLiftWords,
  sideVerdict,
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

const axisOf = { "inertiaGrip.pitch": 2, "inertiaGrip.yaw": 1, "inertiaGrip.roll": 0 } as const

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
    const axis = key in axisOf ? axisOf[key as keyof typeof axisOf] : null
    const notes = [
      spreadText(spreads?.[key], quantity, units),
      key === "fullDraw.netLiftNm" ? netLiftWords(value) : "",
      axis === null ? "" : `${fixed(value / figures.stripped.inertiaGrip[axis][axis], 2)}× bare bow`,
    ]
    return {
      key,
      label: axis === null ? label : `Turn resistance, ${label.toLowerCase()}`,
      value: said(value, quantity, units),
      note: notes.filter((note) => note !== "").join(", "),
    }
  })
}

/** Each aim of the setup with how it stands against it; none without an aim. */
export function cardTarget(evaluation: Evaluation, spreads: Spreads | null, units: UnitChoice): readonly CardLine[] {
  const { target } = evaluation.scene
  const { centreMm, massG, fullDraw } = figuresOf(evaluation)
  const line = (key: ReadoutKey, asked: unknown, verdict: Verdict): CardLine[] => {
    const { target: aim, words } = withSpread(verdict, spreads?.[key])
    return asked === undefined || aim === null
      ? []
      : [
          {
            key,
            label: readouts[key].label,
            value: aim.replace(/^target /, ""),
            note: words.replace(/ the (target|limit)(?=$|,)/, ""),
          },
        ]
  }
  return [
    ...line("centreMm.forward", target.forwardMm, forwardVerdict(centreMm[0], target.forwardMm, units)),
    ...line("centreMm.up", target.upMm, upVerdict(centreMm[1], target.upMm, units)),
    ...line("centreMm.side", target.sideMm, sideVerdict(centreMm[2], target.sideMm, units)),
    ...line("fullDraw.netLiftNm", target.netLiftNm, netLiftVerdict(fullDraw.netLiftNm, target.netLiftNm, units)),
    ...line("massG", target.massMaxG, massVerdict(massG, target.massMaxG, units)),
  ]
}

/** "Recurve, 40 lbf, draw length 665 mm, brace height 220 mm, nock height 48 mm, right-handed": the bow in a line. */
export function cardBow({ bow }: Scene, units: UnitChoice): string {
  const length = (mm: number) => short(mm, "length", units)
  return [
    bow.kind === "compound" ? "Compound" : "Recurve",
    short(bow.drawWeightLbf, "force", units) +
      (bow.kind === "compound" ? ` peak, ${bow.letOffPercent}\u00a0% let-off` : ""),
    `draw length ${length(bow.drawLengthMm)}`,
    `brace height ${length(bow.braceHeightMm)}`,
    `nock height ${length(bow.nockHeightMm)}`,
    `${bow.hand}-handed`,
  ].join(", ")
}

/** "Sight 230 g; plunger 22 g": what else is on the bow; empty without accessories. */
export const cardAccessories = ({ accessories }: Scene, units: UnitChoice): string =>
  accessories.map(({ name, massG }) => `${name} ${short(massG, "mass", units)}`).join("; ")

/** Whether the numbers are those of the real bow, in a sentence or two. `result` is null where nothing was read. */
export function cardMeasured({ measurements }: Scene, result: MeasureResult | null): string {
  const count = measurements?.length ?? 0
  const elbow = "The elbow's elevation is an assumption unless it was measured."
  if (count === 0 || result === null) {
    return `Assumed: every number is as it was entered; nothing was read off the real bow. ${elbow}`
  }
  const readings = `${result.readings.length} reading${result.readings.length === 1 ? "" : "s"}`
  if (!result.fit.applied) {
    return `Assumed: the figures do not use the ${readings} that were taken. ${elbow}`
  }
  const open = (Object.keys(unknownWords) as (keyof typeof unknownWords)[]).filter(
    (name) => result.known[name] !== "yes",
  )
  const kept = open.length === 0 ? "" : ` As assumed: ${open.map((name) => unknownWords[name]).join(", ")}.`
  return `Measured: the riser is fitted to ${readings} of the real bow; each ± holds 95 % of the time if the readings are as sure as they say.${kept} The parts of the rig are as entered. ${elbow}`
}

export const cardWords = {
  parts: "Parts and settings",
  part: "Part",
  setting: "Setting",
  mass: "Mass",
  screw: "Screws in, from the grip",
  screwAxes: (unit: string) => ["ahead", "up", `right, ${unit}`] as const,
  held: "At brace, level",
  drawn: "At full draw, level",
  target: "Against the target",
  noTarget: "No target is set.",
  certainty: "Measured or assumed",
  notes: "Notes",
  cautions: "Cautions",
  accessories: "Also on the bow",
  code: "Opens this setup on a phone",
  codeLess: "Opens this setup without its notes, readings and log",
  fromRight: "from the right",
  fromAbove: "from above",
  drawing: "From the right and from above, to one scale. Lengths are true; numbers are those of the list.",
  noParts: "No rig: the bow is bare.",
  cut: "The whole of the notes is in the file.",
} as const
