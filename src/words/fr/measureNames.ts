import type { measureNames as english } from "../measureNames"

export const measureNames: typeof english = {
  mass: "masse sur la balance",
  error: "incertitude (±)",
  slope: "pente, avant vers le haut",
  cant: "dévers, haut vers la droite",
  pointError: "point, incertitude (±)",
  swings: "oscillations complètes",
  seconds: "durée totale",
  amplitude: "amplitude de chaque côté",
  line: "longueur des fils",
  radius: "du fil au point d’équilibre",
  radiusError: "distance, incertitude (±)",
  rating: "ressenti",
  score: "points",
  group: "taille du groupement",
}
