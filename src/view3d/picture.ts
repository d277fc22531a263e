import { createContext, useContext } from "react"
import type { Object3D } from "three"
import type { Vec3 } from "../core/solids"
import type { Evaluation, WeighedPart } from "../scene/evaluate"
import type { Bench, BenchState } from "../state/bench"
import type { Beside } from "../state/compared"
import type { Played } from "../state/played"
import type { Labels } from "./labels"
import type { Looks } from "./looks"

/** The state as everything in the picture is drawn from it. */
export interface PictureFrame {
  readonly state: BenchState
  /** As the picture shows it: as held, or in the middle of a motion that is played. */
  readonly evaluation: Evaluation
  readonly played: Played | null
  /** The setup beside the present one; drawn see-through. */
  readonly other: Beside | null
  readonly parts: ReadonlyMap<string, WeighedPart>
  /** Height of the ground where the archer stands, m, world axes. */
  readonly ground: number
  /** Slope of the hillside around it, degrees, positive up toward the target. */
  readonly hillDeg: number
  /** Height at which the moment arm is drawn, m, world axes. */
  readonly level: number
  /** The line to the target on it, m ahead of the grip. */
  readonly line: { readonly from: number; readonly to: number }
  /** What the camera must show, world axes, m. */
  readonly reach: readonly Vec3[]
}

export type Update = (frame: PictureFrame) => void

/** What the pieces of the picture share. */
export interface Picture {
  readonly bench: Bench
  readonly looks: Looks
  readonly labels: Labels
  frame(): PictureFrame
  /** Whether the big figures lie over the picture now: not on a phone, which has them below, nor in a lesson, which has none. */
  figuresOver(): boolean
  /** Asks for one new frame; asking again before it is drawn changes nothing. */
  draw(): void
  /** Runs `update` at once and once after each change of the state; the returned function ends that. */
  watch(update: Update): () => void
}

/** One thing drawn: made once, changed in place for every new state. */
export interface Drawn {
  readonly object: Object3D
  readonly update: Update
  /** Gives back what is its own; shared shapes and materials stay. */
  dispose?(): void
}

export const PictureContext = createContext<Picture | null>(null)

export function usePicture(): Picture {
  const picture = useContext(PictureContext)
  if (picture === null) throw new Error("no picture around this component")
  return picture
}
