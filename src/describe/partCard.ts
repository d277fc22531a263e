import type { Evaluation } from "../scene/evaluate"
import { picture3d as words } from "../words/picture3d"
import { said, type UnitChoice } from "./format"
import { partTitle } from "./partNames"
import { partShares } from "./partShares"

/** What the card beside a part in the picture says. */
export interface PartCard {
  readonly title: string
  readonly mass: string
  /** Its part of the nose-down moment. */
  readonly moment: string
  /** That as a share of the whole bow's, as the parts table has it; null where there is no whole to share. */
  readonly share: string | null
}

/** The card for the part at `path`, or null where the scene has no such part. */
export function partCard(evaluation: Evaluation, path: string, choice: UnitChoice): PartCard | null {
  const { scene, now } = evaluation
  const part = now.parts.find((candidate) => candidate.path === path)
  if (part === undefined) return null
  const share = partShares(evaluation)?.get(path)
  const moment = said(Math.abs(part.noseDown), "moment", choice)
  return {
    title: partTitle(scene, path),
    mass: said(part.mass * 1e3, "mass", choice),
    moment: part.noseDown >= 0 ? words.noseDown(moment) : words.noseUp(moment),
    share: share === undefined ? null : words.share(share),
  }
}
