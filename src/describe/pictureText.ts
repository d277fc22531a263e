import { chainsOf } from "../scene/address"
import { elementMassG } from "../scene/assemble"
import { nameCounter } from "../scene/assemble/parts"
import type { Evaluation } from "../scene/evaluate"
import type { Element, Scene } from "../scene/schema"
import { forwardVerdict, withSpread } from "./balanceText"
import type { UnitChoice } from "./format"
import { partTitle } from "./partNames"
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
  const place = `Balance point ${aheadWords(forward * 1e3, units)}, ${aboveWords(up * 1e3, units)}`
  return [
    `A ${bow.hand}-handed ${bow.kind} bow, ${held}.`,
    ...chainsOf(scene).map(({ path, chain, arm }) => {
      const angles = arm
        ? ` splay ${short(arm.value.splayDeg, "angle", units)}, droop ${short(arm.value.droopDeg, "angle", units)},`
        : ""
      const parts = chain.length === 0 ? "nothing on it" : elements(chain, units)
      return `${arm ? partTitle(scene, path) : capital(path)}:${angles} ${parts}.`
    }),
    `${place}, ${sideWords(side * 1e3, units)}${wanted === null ? "" : `; ${wanted}: ${words}`}.`,
  ].join(" ")
}

function elements(chain: readonly Element[], units: UnitChoice): string {
  const named = nameCounter()
  return chain.map((element) => elementText(element, named(element.part).split("#")[1], units)).join(", ")
}

function elementText(element: Element, number: string | undefined, units: UnitChoice): string {
  const count = number === undefined ? "" : ` ${number}`
  switch (element.part) {
    case "weights": {
      const discs = element.count === 1 ? "1 disc" : `${element.count} discs`
      return `${discs}, ${short(elementMassG(element), "mass", units)}`
    }
    case "vbar":
      return `V-bar${count}`
    case "swing":
      return `swing weight${count} of ${short(element.bobMassG, "mass", units)} on ${short(element.stemLengthMm, "length", units)}`
    default:
      return `${element.part}${count} ${short(element.lengthMm, "length", units)}`
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
