/** The keys of a scene that say what was read off the real bow and what was tried, as validators. */
import * as z from "zod/mini"
import { placeMm } from "../fields"
import { choiceMessage, defaulted, needed, optional, text, triple } from "../schemaNumbers"
import { logFields, MAX_LOG, MAX_MEASUREMENTS, MAX_SCORES, measureFields as f } from "./fields"

const date = z._default(text(40), "")
const axis = z.enum(["pitch", "yaw", "roll"])

/** Both lists, absent where nothing was measured or tried. `rig` is the validator of a whole rig. */
export function measuredKeys<Rig extends z.ZodMiniType>(rig: Rig) {
  const seen = {
    /** What was on the hook: the riser alone, the strung bow with its accessories, or that with a rig. */
    on: z.enum(["riser", "bow", "rigged"]),
    /** The rig it had then, only where there was one. */
    rig: z.optional(rig),
    excluded: z._default(z.boolean(), false),
    note: z._default(text(500), ""),
    date,
  }
  const timed = { count: needed(f.count), seconds: needed(f.seconds), errorSeconds: defaulted(f.errorSeconds) }
  const measurement = z.discriminatedUnion(
    "kind",
    [
      z.strictObject({ kind: z.literal("scale"), massG: needed(f.massG), errorG: defaulted(f.errorG), ...seen }),
      z.strictObject({
        kind: z.literal("hang"),
        atMm: triple(placeMm),
        pointErrorMm: defaulted(f.pointErrorMm),
        slopeDeg: needed(f.slopeDeg),
        cantDeg: optional(f.cantDeg),
        errorDeg: defaulted(f.errorDeg),
        ...seen,
      }),
      z.strictObject({
        kind: z.literal("swing"),
        atMm: triple(placeMm),
        pointErrorMm: defaulted(f.pointErrorMm),
        axis,
        ...timed,
        amplitudeDeg: defaulted(f.amplitudeDeg),
        ...seen,
      }),
      z.strictObject({
        kind: z.literal("twist"),
        axis,
        lineMm: needed(f.lineMm),
        radiusMm: needed(f.radiusMm),
        radiusErrorMm: defaulted(f.radiusErrorMm),
        ...timed,
        ...seen,
      }),
    ],
    { error: choiceMessage("kind", ["scale", "hang", "swing", "twist"]) },
  )
  const tried = z.strictObject({
    date,
    name: z._default(text(200), ""),
    /** How it felt, in a few words and from 1 to 5. */
    feel: z._default(text(200), ""),
    rating: optional(logFields.rating),
    scores: z._default(z.array(needed(logFields.score)).check(z.maxLength(MAX_SCORES)), []),
    groupMm: optional(logFields.groupMm),
    note: z._default(text(2000), ""),
    rig,
  })
  return {
    measurements: z.optional(z.array(measurement).check(z.maxLength(MAX_MEASUREMENTS))),
    log: z.optional(z.array(tried).check(z.maxLength(MAX_LOG))),
  }
}
