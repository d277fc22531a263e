import * as z from "zod/mini"
import { chainsOf } from "../address"
import { questionFields } from "../kit/fields"
import { mountNames } from "../mountNames"
import { defaulted, needed, optional, type Scene } from "../schema"
import { targetFields } from "../fields"
import { mountsWithSwings } from "./mounts"

const mountName = z.enum(mountNames)
const band = (key: Exclude<keyof typeof targetFields, "massMaxG">) =>
  z.optional(z.tuple([needed(targetFields[key]), needed(targetFields[key])]))

export const scoreNames = ["nearest", "lightest", "steadiest", "steadyForMass"] as const
export type ScoreName = (typeof scoreNames)[number]

/** What is asked of a kit: where its pieces may go, what the setup must keep to, and what counts as best. */
export const questionSchema = z.strictObject({
  /** Mounts built anew; the others stay as they are. */
  mounts: z.array(mountName),
  /** The one of them that may carry a V-bar. */
  vbarMount: z.nullable(mountName),
  /** Both arms of a V-bar alike, or each for itself. */
  arms: z.enum(["alike", "free"]),
  /** Whether the front mount, if built anew, always gets a rod, and the V-bar's mount a V-bar. */
  always: z.strictObject({ frontRod: z.boolean(), vbar: z.boolean() }),
  mostDiscs: defaulted(questionFields.mostDiscs),
  /** Where balance point and turn resistance are judged: level, at brace or at full draw. */
  hold: z.enum(["brace", "drawn"]),
  target: z.strictObject({
    forwardMm: band("forwardMm"),
    upMm: band("upMm"),
    sideMm: band("sideMm"),
    netLiftNm: band("netLiftNm"),
    massMaxG: optional(targetFields.massMaxG),
    reachForwardMm: optional(questionFields.reachForwardMm),
    reachSideMm: optional(questionFields.reachSideMm),
    pitchLeast: optional(questionFields.pitchLeast),
    yawLeast: optional(questionFields.yawLeast),
    rollLeast: optional(questionFields.rollLeast),
  }),
  score: z.enum(scoreNames),
  /** Every setup for itself, or of the same pieces in the same places only the one with the best angles. */
  variety: z.enum(["each", "pieces"]),
  count: defaulted(questionFields.count),
})

export type FindQuestion = z.output<typeof questionSchema>
export type FindTarget = FindQuestion["target"]

/**
 * The question a scene suggests: its own targets, its own V-bar's mount or else the front one, and every mount that
 * carries something other than a swing weight, which the kit has none of. What has a front rod or a V-bar keeps one.
 */
export function questionFor(scene: Scene): FindQuestion {
  const present = mountNames.filter((mount) => scene.mounts[mount] !== undefined)
  const vbarMount =
    chainsOf(scene).find(({ chain }) => chain.some(({ part }) => part === "vbar"))?.mount ??
    present.find((mount) => mount === "front") ??
    null
  const swinging = new Set(mountsWithSwings(scene))
  const mounts = present.filter(
    (mount) => !swinging.has(mount) && (mount === vbarMount || scene.rig.some((entry) => entry.mount === mount)),
  )
  return {
    mounts,
    vbarMount: vbarMount !== null && mounts.includes(vbarMount) ? vbarMount : null,
    arms: "alike",
    always: {
      frontRod: scene.rig.some(({ mount, chain }) => mount === "front" && chain.some(({ part }) => part === "rod")),
      vbar: chainsOf(scene).some(({ arm }) => arm !== undefined),
    },
    mostDiscs: questionFields.mostDiscs.fallback ?? 0,
    hold: "brace",
    target: { ...scene.target },
    score: "nearest",
    variety: "each",
    count: questionFields.count.fallback ?? 0,
  }
}
