import type { bar as english } from "../bar"

export const bar: typeof english = {
  label: "Réglage",
  fresh: "Nouveau",
  examples: "Exemples",
  lessons: "Leçons",
  open: "Ouvrir…",
  save: "Enregistrer",
  saveAs: "Enregistrer sous…",
  takeAway: "Partager, imprimer",
  settings: "Options",
  name: "Nom de ce réglage",
  notSaved: "pas encore enregistré dans un fichier",
  asShipped: "tel que fourni",
  savedIn: (file) => `enregistré dans ${file}`,
  unsaved: "non enregistré",
  step: (command, change) => `${command} : ${change}`,
}
