import type { compare as english } from "../compare"

export const compare: typeof english = {
  hold: "Garder pour comparer",
  file: "Comparer à un fichier…",
  with: "Comparé à",
  swap: "Échanger les deux réglages",
  stop: "Ne plus comparer",
  held: "Gardé pour comparer",
  heldThis: (name) => `Comparé à ${name}`,
  onBench: (name) => `Sur l’établi : ${name}`,
  swapped: "échange des deux réglages",
}
