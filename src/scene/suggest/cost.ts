import type { Knob } from "./knobs"

/**
 * What a change costs at the bench, in discs: screwing one disc on or off is 1 (common practice, no source; only the
 * order and the growth matter).
 *
 * - discs: 1 for each put on or taken off, a moved one both; 25 more for each stack that is begun or ended, which
 *   needs another bolt or leaves a bare thread;
 * - a V-bar's arm turned: 5 to loosen and set the joint, and 0.2 a degree; a mirrored pair is one change;
 * - a rod or extender swapped for another length: 15, and 0.05 a millimetre; a mirrored pair is one change;
 * - an extender taken out: 15; put in, which one has to have: 20, and 0.05 a millimetre; a mirrored pair is one change.
 *
 * So a few discs come before a turn, a turn before a swap, a new stack last.
 */
export const costs = {
  stack: 25,
  turn: 5,
  perDegree: 0.2,
  swap: 15,
  perMm: 0.05,
  extenderOut: 15,
  extenderIn: 20,
} as const

/** Of turning a knob by `steps`; what parts cost that are put in or taken out, their `Structure` says. */
export function costOf(knob: Knob, steps: number): number {
  const size = Math.abs(steps)
  const step = Math.abs(knob.moves[0]?.perStep ?? 0)
  switch (knob.kind) {
    case "discs":
    case "shiftDiscs":
      return knob.moves.length * size + costs.stack * stacksBegunOrEnded(knob, steps)
    case "splay":
    case "droop":
      return costs.turn + costs.perDegree * size * step
    case "length":
      return costs.swap + costs.perMm * size * step
  }
}

const stacksBegunOrEnded = ({ moves }: Knob, steps: number): number =>
  moves.filter(({ slot, perStep }) => slot.value === 0 || slot.value + steps * perStep === 0).length
