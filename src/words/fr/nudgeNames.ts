import type { nudgeNames as english } from "../nudgeNames"

export const nudgeNames: typeof english = {
  impulse: "choc",
  push: "poussée",
  lasting: "durée de la poussée",
  leaves: "la flèche quitte l’arc après",
  pitch: "contre le tangage",
  yaw: "contre le lacet",
  roll: "contre le roulis",
  damping: "amortissement",
  noResistance:
    "aucune résistance à la rotation autour d’un des axes\u00a0; pour une impulsion, il en faut autour de chaque axe",
}
