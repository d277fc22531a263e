import type { handle as english } from "../handle"

export const handle: typeof english = {
  discs: (count) => `${count} ${count < 2 ? "disque" : "disques"}`,
  lift: (moment) => `levée ${moment} à pleine allonge`,
  balance: (ahead) => `point d’équilibre ${ahead}`,
  standing: (value, effect) => `${value}\u00a0; ${effect}`,
  changed: (label, value, effect) => `${label}\u00a0: ${value}. ${effect}.`,
  bothArms: (value) => `${value}, les deux bras`,
  fingers: (force) => `${force} sur les doigts`,
  most: (value) => `Pas plus de ${value}`,
  least: (value) => `Pas moins de ${value}`,
  addExtender: (where) => `Ajouter une extension, ${where}`,
  removeExtender: (where) => `Retirer l’extension, ${where}`,
}
