import { readScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import {
  arm,
  discs,
  type Document,
  extender,
  fullDocument,
  recurveBow,
  rigged,
  rod,
  smallestDocument,
  swing,
  vbar,
} from "./documents"

/** The scene of a document that is valid by intent. */
export function sceneOf(document: Document): Scene {
  const read = readScene(document)
  if (!read.ok) throw new Error(read.errors.map((error) => `${error.path} ${error.message}`).join("; "))
  return read.value
}

export const posed = (document: Document, pose: Document): Document => ({ ...document, pose })

export const drawnCompound = (): Document => ({
  ...posed(fullDocument(), { draw: 0.6, slopeDeg: -25, cantDeg: -7 }),
  bow: {
    ...(smallestDocument().bow as Document),
    limbs: { massG: 310, centreMm: [-23, 340], drawnShiftMm: [-31, -19], gyrationMm: [90, 37, 85] },
  },
})

/** Swing weights of both joints on arms and stops, mounts tilted and turned, a stack of no discs in mid chain. */
export const hungDocument = (): Document =>
  posed(
    rigged(
      {
        front: [
          vbar({
            left: arm(35, 12, [extender({ lengthMm: 53 }), swing({ stopDeg: 5 }), rod({ lengthMm: 250 })]),
            right: arm(72, -9, [rod({ lengthMm: 253 }), swing({ joint: "ball", stopDeg: 11 }), discs({ count: 3 })]),
          }),
          discs({ count: 0 }),
          rod({ innerMm: 7 }),
          swing({ joint: "ball", stopDeg: 65, stemLengthMm: 90 }),
          vbar({ left: arm(140, 31, [discs({ count: 2 })]) }),
        ],
        back: [rod({ massG: 0, lengthMm: 130 }), swing({ stopDeg: 60, bobMassG: 70 })],
      },
      {
        mounts: {
          front: { atMm: [43, -71, 2], pitchDeg: 13, yawDeg: -17 },
          lower: { atMm: [31, -260, 0], pitchDeg: -5 },
          back: { atMm: [-17, -83, 0], pitchDeg: 7, yawDeg: 170 },
        },
      },
    ),
    { draw: 0.35, slopeDeg: 23, cantDeg: 11 },
  )

/** A recurve's limbs so strongly recurved that at brace the string lies on them, where the scene says it may. */
const wrappingLimbs = { rootMm: [1, 290], lengthMm: 600, rootAngleDeg: 14, recurveDeg: 75, recurveFrom: 0.6 }

/** A recurve with a short rig, at a draw; with `stringWrap` its string lies on the limbs near brace. */
export function recurveDocument(draw: number, stringWrap = false): Document {
  const bow = recurveBow()
  return posed(
    rigged(
      {
        front: [vbar({ left: arm(35, 12, [rod({ lengthMm: 250 }), discs()]) }), rod(), discs({ count: 3 })],
        back: [swing()],
      },
      { bow: stringWrap ? { ...bow, limbs: { ...(bow.limbs as Document), ...wrappingLimbs }, stringWrap } : bow },
    ),
    { draw, slopeDeg: 13, cantDeg: -5 },
  )
}
