import type { fixes as english } from "../fixes"

export const fixes: typeof english = {
  title: "Hors objectif",
  tryIt: "Essayer",
  tryThis: (change) => `Essayer : ${change}`,
  done: (change) => `${change}. Annuler revient en arrière.`,
}
