import type { kitFiles as english } from "../kitFiles"

const pieces = (count: number) => (count < 2 ? `${count} pièce` : `${count} pièces`)

export const kitFiles: typeof english = {
  mine: "Ma boîte",
  onFindSheet: (kit, count) => `« ${kit} » est dans la boîte, sur la feuille Chercher : ${pieces(count)}.`,
  inBox: (kit, count) => `« ${kit} » est dans la boîte : ${pieces(count)}`,
  notOpened: (kit) => `La boîte « ${kit} » n’a pas été ouverte ; celle de l’établi est restée telle quelle.`,
  notSaved: (reason) => `La boîte n’a pas été enregistrée : ${reason}`,
  away: (id) => `la boîte « ${id} » n’a pas pu être chargée ; le réseau est-il là ?`,
  silent: "un processus de recherche ne répond plus",
  searchAway: "la partie de la page qui cherche n’a pas pu être chargée, ou s’est arrêtée",
  lost: "un message s’est perdu",
}
