import type { sceneFaults as english } from "../sceneFaults"

export const sceneFaults: typeof english = {
  at: (place, fault) => `${place}\u00a0: ${fault}`,
  text: (text) => `«\u00a0${text}\u00a0»`,
  nothing: "une valeur vide",
  list: (length) => (length < 2 ? `une liste de ${length} élément` : `une liste de ${length} éléments`),
  object: "un objet",
  number: (given, from, to) => [given, " ne convient pas\u00a0; il faut un nombre entre ", from, " et ", to],
  whole: (given, from, to) => [given, " ne convient pas\u00a0; il faut un nombre entier entre ", from, " et ", to],
  noNumber: (from, to) => ["manque\u00a0; il faut un nombre entre ", from, " et ", to],
  noWhole: (from, to) => ["manque\u00a0; il faut un nombre entier entre ", from, " et ", to],
  drawTooShort: (given, brace) => [given, " ne convient pas\u00a0; il faut plus que le band, ", brace],
  boreTooWide: (given, outer) => [given, " ne convient pas\u00a0; il faut moins que le diamètre extérieur, ", outer],
  wrongWayRound: (from, to) => ["de ", from, " à ", to, "\u00a0: le plus petit nombre vient en premier"],
  noBody:
    "aucun corps n’a ces rayons de giration\u00a0: le carré de chacun ne dépasse pas la somme des deux autres carrés",
  noMount: (mount) =>
    `«\u00a0${mount}\u00a0» est demandé, mais l’arc n’a pas cette fixation\u00a0; ajouter mounts.${mount}`,
  mountTaken: (mount) => `«\u00a0${mount}\u00a0» porte déjà un montage\u00a0; un seul montage par fixation`,
}
