import { chainsOf } from "../scene/address"
import { elementMassG } from "../scene/assemble"
import { nameCounter } from "../scene/assemble/parts"
import type { Evaluation } from "../scene/evaluate"
import type { Element, Scene } from "../scene/schema"
import { described } from "../words/described"
import { forwardVerdict, withSpread } from "./balanceText"
import type { UnitChoice } from "./format"
import { kindWords, mountWords, partTitle } from "./partNames"
import { aboveWords, aheadWords, short, sideWords } from "./placeWords"
import { cantText, drawText, slopeText } from "./poseText"

/**
 * What the picture shows, in sentences, for those who do not see it: the bow and how it is held, each chain from its
 * mount outward, and the balance point against its target. `spread` is the ± of its place forward on a measured bow.
 */
export function pictureText(scene: Scene, { now }: Evaluation, units: UnitChoice, spread?: number): string {
  const { bow, pose, target } = scene
  const [forward, up, side] = now.centre
  const held = [drawText(pose.draw), slopeText(pose.slopeDeg), cantText(pose.cantDeg)].join(", ")
  const { words, target: wanted } = withSpread(forwardVerdict(forward * 1e3, target.forwardMm, units), spread)
  const place = [aheadWords(forward * 1e3, units), aboveWords(up * 1e3, units), sideWords(side * 1e3, units)] as const
  const angle = (degrees: number) => short(degrees, "angle", units)
  return [
    described[bow.kind][bow.hand](held),
    ...chainsOf(scene).map(({ path, mount, chain, arm }) => {
      const parts = chain.length === 0 ? described.nothing : elements(chain, units)
      if (arm === undefined) return described.chain(capital(mountWords[mount]), parts)
      return described.arm(partTitle(scene, path), angle(arm.value.splayDeg), angle(arm.value.droopDeg), parts)
    }),
    wanted === null ? described.balance(...place) : described.judged(...place, wanted, words),
  ].join(" ")
}

function elements(chain: readonly Element[], units: UnitChoice): string {
  const named = nameCounter()
  return chain.map((element) => elementText(element, named(element.part).split("#")[1], units)).join(", ")
}

function elementText(element: Element, number: string | undefined, units: UnitChoice): string {
  const kind = kindWords[element.part] + (number === undefined ? "" : ` ${number}`)
  const length = (mm: number) => short(mm, "length", units)
  switch (element.part) {
    case "weights":
      return described.discs(element.count, short(elementMassG(element), "mass", units))
    case "vbar":
      return kind
    case "swing":
      return described.swing(kind, short(element.bobMassG, "mass", units), length(element.stemLengthMm))
    default:
      return described.piece(kind, length(element.lengthMm))
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
