import type { Evaluation } from "../scene/evaluate"
import type { MeasureResult } from "../scene/measure"
import type { Bow } from "../scene/schema"
import type { Report } from "../scene/sweeps"
import { cautions } from "./cautions"
import { drawSection, fullDrawSection, slopesSection } from "./reportDrawn"
import { balanceSection, partsSection, swingSection, turnSection } from "./reportHeld"
import { measuredSection } from "./reportMeasured"
import { targetSection } from "./reportTarget"
import { bowWords, poseWords } from "./reportWords"

export interface ReportSheet {
  /** As the person named it. */
  readonly file: string
  readonly evaluation: Evaluation
  readonly report: Report
  /** Null where nothing was read off the real bow. */
  readonly measured?: MeasureResult | null
}

/** The balance sheet of one scene for a coach to read. Plain text, ending in a line break. */
export function reportText({ file, evaluation, report, measured = null }: ReportSheet): string {
  const { scene, now } = evaluation
  const sections = [
    [
      scene.name === "" ? "Scene without a name" : scene.name,
      `  ${file}`,
      `  ${bowWords(scene.bow)}`,
      `  ${poseWords(scene.pose, now.limbs.draw)}`,
    ],
    partsSection(report),
    balanceSection(report),
    targetSection(scene.target, report, measured?.fit.applied ? measured.spreads : null),
    turnSection(report),
    swingSection(evaluation),
    fullDrawSection(report),
    slopesSection(report),
    drawSection(report, scene.bow.kind),
    measuredSection(scene, measured),
    ["What to make of these numbers", ...certainty(scene.bow).map(indented)],
    ["Cautions", ...cautions(scene, now.parts).map(indented)],
  ]
  const lines = sections.filter((section) => section.length > 0).map((section) => section.map(plain).join("\n"))
  return `${lines.join("\n\n")}\n`
}

/** What is exact, what is a model and what is left out, for this kind of bow. */
function certainty(bow: Bow): string[] {
  return [
    "Exact for the bow as entered: masses, balance, moments, turn resistance of its parts taken as rigid.",
    ...(bow.kind === "compound" ? sketched : modelled(bow.stringWrap)),
    "Left out: bending of the rods, give of the hand, the arrow's flight.",
  ]
}

const sketched = [
  "Exact for a compound at brace and full draw: the force on the fingers, from its peak and its let-off.",
  "A sketch: any force between the two. Cams are not modelled; rise, plateau and fall have the usual shape only.",
]

const modelled = (wrap: boolean): string[] => [
  "From the limb's own bending: its shape, and the draw force between brace and full draw, for the limb as entered.",
  ...(wrap ? [] : ["Left out near brace: the string lying on the limb."]),
]

const indented = (line: string): string => `  ${line}`

/** Names out of a file keep to their line and give the terminal no orders. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what it is about
const plain = (line: string): string => line.replace(/[\u0000-\u001f\u007f-\u009f]/g, "\ufffd")
