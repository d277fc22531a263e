import { spoken } from "./language"

/** What each live number is, under the same keys as its name in `readout`; one sentence for whoever asks. */
export const meanings = spoken("meanings", {
  mass: "Bow, rig and, once drawn, the arrow.",
  forward: "Along the bow's own forward direction.",
  up: "Along the riser; negative is below the grip.",
  side: "As the archer sees it; negative is left.",
  arm: "Level distance from the grip to the plumb line through the balance point.",
  armSide: "The same to the archer's right.",
  noseDown: "Weight times moment arm: what the hand must hold up.",
  cant: "Weight times side arm: turns the top of the bow to the right.",
  fingers: "At the draw shown.",
  pitch: "Resistance to the front rising or dropping, about the grip.",
  yaw: "Resistance to the front swinging left or right, about the grip.",
  roll: "Resistance to canting, about the grip.",
  free: "A free weight counts less in a quick turn than a fixed one.",
  principal: "Principal moment about the centre of mass.",
  stripped: "Riser, limbs, string and accessories.",
  net: "Lift of the line of pull less the nose-down moment, level: positive raises the front.",
  lift: "The fingers pull above the grip and so raise the front.",
  drawnNoseDown: "Of the drawn bow with its arrow.",
  balanced: "Where the balance point would have to be for a net of zero.",
  drawnForward: "Ahead of the grip at full draw.",
  gripShift: "How far the hand's pressure point moves to hold the net.",
  hold: "On the fingers at full draw.",
  drawnMass: "With the arrow.",
})
