import type { bar as english } from "../bar"

export const bar: typeof english = {
  label: "Réglage",
  fresh: "Nouveau",
  lessons: "Leçons",
  open: "Ouvrir…",
  save: "Enregistrer",
  takeAway: "Partager ou imprimer",
  settings: "Préférences",
}
