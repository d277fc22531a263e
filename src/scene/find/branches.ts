import { addAxial, blankOptions, type Options } from "../../core/find"
import { armDirection, type Side } from "../../core/rig"
import { along, type Vec3 } from "../../core/solids"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { MM } from "../assemble"
import type { Arm } from "../schema"
import type { ChainOption } from "./pieces"

/** What hangs on a V-bar, by side. */
export type Arms = Partial<Record<Side, Arm>>

/** The options of one branch as the engine wants them, and what an option is on the rig. */
export interface Branch<T> {
  readonly options: Options
  at(option: number): T
  /** Which pieces an option is made of, angles apart: the place of its chain in the list the branch was made of. */
  piecesOf(option: number): number
}

/** Chains that all begin at `start` (m) and run along the unit `direction`. */
export function chainBranch(
  chains: readonly ChainOption[],
  start: Vec3,
  direction: Vec3,
  kinds: number,
): Branch<ChainOption["elements"]> {
  const options = blankOptions(chains.length, kinds)
  chains.forEach(({ body, takes }, row) => {
    addAxial(body, start, direction, options, row)
    for (const kind of takes) options.uses[row * kinds + kind]!++
  })
  return { options, at: (option) => chains[option]!.elements, piecesOf: (option) => option }
}

export interface Angles {
  readonly splayDeg: number
  readonly droopDeg: number
}

/**
 * The arms of a V-bar on `sides` (both: alike), every chain at every pair of angles. An empty chain is no arm, and
 * stands once, not at every angle. `middle`: the V-bar's mid-length point, m.
 */
export function armBranch(
  chains: readonly ChainOption[],
  angles: readonly Angles[],
  sides: readonly Side[],
  middle: Vec3,
  armOffsetMm: number,
  kinds: number,
): Branch<Arms> {
  const choices = chains.flatMap((chain, pieces) =>
    (chain.elements.length === 0 ? angles.slice(0, 1) : angles).map((angle) => ({ chain, pieces, ...angle })),
  )
  const options = blankOptions(choices.length, kinds)
  choices.forEach(({ chain, splayDeg, droopDeg }, row) => {
    if (chain.elements.length === 0) return
    for (const side of sides) {
      const direction = armDirection(splayDeg * DEGREE, droopDeg * DEGREE, side)
      addAxial(chain.body, along(middle, direction, armOffsetMm * MM), direction, options, row)
      for (const kind of chain.takes) options.uses[row * kinds + kind]!++
    }
  })
  return {
    options,
    piecesOf: (option) => choices[option]!.pieces,
    at(option) {
      const { chain, splayDeg, droopDeg } = choices[option]!
      if (chain.elements.length === 0) return {}
      const arm = { splayDeg, droopDeg, chain: chain.elements as Arm["chain"] }
      return Object.fromEntries(sides.map((side) => [side, arm]))
    },
  }
}

/** A branch in which nothing is chosen, for a trunk without that branch. */
export const noBranch = <T>(kinds: number, nothing: T): Branch<T> => ({
  options: blankOptions(1, kinds),
  at: () => nothing,
  piecesOf: () => 0,
})
