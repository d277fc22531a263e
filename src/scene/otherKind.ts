import { type Result, success } from "./errors"
import { compoundLimbFields, type NumberField, recurveLimbFields } from "./fields"
import { unsolvable } from "./limbErrors"
import { placeLimbs } from "./limbPlace"
import type { CompoundBow, RecurveBow } from "./schema"
import { newScene } from "./templates"

/** Let-off of a compound no one has told about, % (common practice, no source). */
const USUAL_LET_OFF = 75

/**
 * The same bow with cams: everything but the limbs is kept, and each limb becomes a body of the same mass, with the
 * centre, the radii of gyration at brace and the shift to full draw that the solved limb has. Rounded to 0.1 mm and
 * held to their fields' ranges. Fails where the recurve's limbs cannot be solved.
 */
export function asCompound(bow: RecurveBow): Result<CompoundBow> {
  const brace = placeLimbs(bow, 0)
  if (!brace.ok) return unsolvable(brace)
  const full = placeLimbs(bow, 1)
  if (!full.ok) return unsolvable(full)
  const [braced, drawn] = [brace.value.solids[0], full.value.solids[0]]
  const out = (y: number) => y * 1e3 - bow.centreLineMm
  const f = compoundLimbFields
  const radius = (inertia: number) => tenth(Math.sqrt(inertia / braced.mass) * 1e3)
  const [roll, yaw] = [radius(braced.aboutCentre.xx), radius(braced.aboutCentre.yy)]
  const { limbs, stringWrap: _, kind: __, ...kept } = bow
  return success({
    ...kept,
    kind: "compound",
    letOffPercent: USUAL_LET_OFF,
    limbs: {
      massG: limbs.massG,
      centreMm: [held(braced.centre[0] * 1e3, f.forwardMm), held(out(braced.centre[1]), f.outMm)],
      drawnShiftMm: [
        held((drawn.centre[0] - braced.centre[0]) * 1e3, f.shiftForwardMm),
        held((drawn.centre[1] - braced.centre[1]) * 1e3, f.shiftOutMm),
      ],
      // A limb lies in a plane: its squared pitch radius is the sum of the other two, and rounding must not pass it.
      gyrationMm: [roll, yaw, Math.floor(Math.hypot(roll, yaw) * 10) / 10],
    },
  })
}

/**
 * The same bow with recurve limbs: everything but the limbs and the let-off is kept, the limbs keep their mass and
 * take the shape a new bow's have. Whether they can be strung to this brace height is for `evaluate` to say.
 */
export function asRecurve(bow: CompoundBow): RecurveBow {
  const { limbs, letOffPercent: _, kind: __, ...kept } = bow
  const plain = plainRecurve()
  return {
    ...kept,
    kind: "recurve",
    stringWrap: false,
    limbs: { ...plain.limbs, massG: Math.min(limbs.massG, recurveLimbFields.massG.max) },
  }
}

/** Brace height and draw length that a new bow's limbs are known to take, for those that cannot take the bow's own. */
export function plainStringing(): { braceHeightMm: number; drawLengthMm: number } {
  const { braceHeightMm, drawLengthMm } = plainRecurve()
  return { braceHeightMm, drawLengthMm }
}

function plainRecurve(): RecurveBow {
  const { bow } = newScene()
  if (bow.kind !== "recurve") throw new Error("a new scene's bow is a recurve")
  return bow
}

const tenth = (mm: number): number => Math.round(mm * 10) / 10
const held = (mm: number, { min, max }: NumberField): number => Math.min(max, Math.max(min, tenth(mm)))
