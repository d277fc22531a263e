import type { Knob } from "./knobs"

/**
 * What a change costs at the bench, in discs: screwing one disc on or off is 1 (common practice, no source; only the
 * order and the growth matter).
 *
 * - discs: 1 for each put on or taken off, a moved one both; 25 more for each stack that is begun or ended, which
 *   needs another bolt or leaves a bare thread;
 * - a V-bar's arm turned: 5 to loosen and set the joint, and 0.2 a degree; a mirrored pair is one change;
 * - a rod or extender swapped for another length: 15, and 0.05 a millimetre; a mirrored pair is one change.
 *
 * So a few discs come before a turn, a turn before a swap, a new stack last.
 */
export function costOf(knob: Knob, steps: number): number {
  const size = Math.abs(steps)
  const step = Math.abs(knob.moves[0]?.perStep ?? 0)
  switch (knob.kind) {
    case "discs":
    case "shiftDiscs":
      return knob.moves.length * size + STACK * stacksBegunOrEnded(knob, steps)
    case "splay":
    case "droop":
      return TURN + PER_DEGREE * size * step
    case "length":
      return SWAP + PER_MM * size * step
  }
}

const STACK = 25
const TURN = 5
const PER_DEGREE = 0.2
const SWAP = 15
const PER_MM = 0.05

const stacksBegunOrEnded = ({ moves }: Knob, steps: number): number =>
  moves.filter(({ slot, perStep }) => slot.value === 0 || slot.value + steps * perStep === 0).length
