import type { plot as english } from "../plot"

export const plot: typeof english = {
  readAlong: (name) => `${name}, à lire le long de la courbe`,
  time: "temps, s",
  now: "actuel",
  held: "gardé",
  save: "Enregistrer en CSV",
}
