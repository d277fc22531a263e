import type { knobs as english } from "../knobs"

export const knobs: typeof english = {
  label: "Prises dans l’image",
  notPossible: (reason) => `Impossible : ${reason}`,
  back: (label, value) => `${label} : retour à ${value}.`,
  extenderAdded: "Extension ajoutée.",
  extenderRemoved: "Extension retirée.",
  extenderKept: "L’extension n’a pas été changée.",
  addExtender: "ajout (extension)",
  removeExtender: "retrait (extension)",
}
