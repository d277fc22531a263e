import type { Evaluation } from "../scene/evaluate"
import { said, type UnitChoice } from "./format"
import { partTitle } from "./partNames"

/** What the card beside a part in the picture says. */
export interface PartCard {
  readonly title: string
  readonly mass: string
  /** Its part of the nose-down moment. */
  readonly moment: string
  /** That as a share of the whole bow's; null where there is no whole to share. */
  readonly share: string | null
}

/**
 * Smallest nose-down moment of the whole bow of which a share is said, N·m: a few grams at the end of a rod. Below, parts
 * that cancel would each be called thousands of per cent.
 */
export const LEAST_TO_SHARE = 0.05

/** The card for the part at `path`, or null where the scene has no such part. */
export function partCard({ scene, now }: Evaluation, path: string, choice: UnitChoice): PartCard | null {
  const part = now.parts.find((candidate) => candidate.path === path)
  if (part === undefined) return null
  const way = part.noseDown >= 0 ? "nose-down" : "nose-up"
  return {
    title: partTitle(scene, path),
    mass: said(part.mass * 1e3, "mass", choice),
    moment: `${said(Math.abs(part.noseDown), "moment", choice)} ${way}`,
    share: Math.abs(now.noseDown) < LEAST_TO_SHARE ? null : share(part.noseDown / now.noseDown),
  }
}

const share = (fraction: number): string => {
  const percent = (fraction * 100)
    .toFixed(0)
    .replace("-", "\u2212")
    .replace(/^\u22120$/, "0")
  return `${percent}\u00a0% of the whole bow's`
}
