import type { hill as english } from "../hill"

export const hill: typeof english = {
  targetUp: (angle) => `cible en montée, ${angle}`,
  targetDown: (angle) => `cible en descente, ${angle}`,
  locked: "bloquée",
  movingUp: (angle) => `en mouvement, arc à ${angle} en montée`,
  movingDown: (angle) => `en mouvement, arc à ${angle} en descente`,
}
