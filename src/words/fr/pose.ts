import type { pose as english } from "../pose"

export const pose: typeof english = {
  brace: "au band",
  drawn: (percent) => `armé à ${percent}`,
  full: "pleine allonge",
  up: (angle) => `${angle} en montée`,
  down: (angle) => `${angle} en descente`,
  level: "à plat",
  right: (angle) => `${angle} à droite`,
  left: (angle) => `${angle} à gauche`,
  upright: "d’aplomb",
}
