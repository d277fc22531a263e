import type { LimbFailure, LimbNumberFault, LimbSetup } from "./types"

/** `nearest` only where there is one. */
const near = (nearest: number | undefined) => (nearest === undefined ? {} : { nearest })

export const notALimb = (quantity: LimbFailure["quantity"], fault: LimbNumberFault): LimbFailure => ({
  ok: false,
  reason: "not-a-limb",
  quantity,
  fault,
})

export const braceUnreachable = ({ limb, braceHeight }: LimbSetup, nearest: number | undefined): LimbFailure => ({
  ok: false,
  reason: "brace-unreachable",
  quantity: "braceHeight",
  braceHeight,
  inFront: -braceHeight >= limb.rootForward,
  ...near(nearest),
})

export const drawBelowBrace = (braceHeight: number, draw: number): LimbFailure => ({
  ok: false,
  reason: "draw-below-brace",
  quantity: "drawLength",
  draw,
  braceHeight,
  nearest: braceHeight,
})

export const drawPastString = (draw: number, straight: number, nearest: number | undefined): LimbFailure => ({
  ok: false,
  reason: "draw-past-string",
  quantity: "drawLength",
  draw,
  straight,
  ...near(nearest),
})

export const limbGivesWay = (draw: number, nearest: number | undefined): LimbFailure => ({
  ok: false,
  reason: "limb-gives-way",
  quantity: "drawLength",
  draw,
  ...near(nearest),
})

export const notConverged = (draw: number): LimbFailure => ({
  ok: false,
  reason: "no-convergence",
  quantity: "drawLength",
  draw,
})
