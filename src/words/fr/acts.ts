import type { acts as english } from "../acts"

export const acts: typeof english = {
  undo: "Annuler",
  redo: "Rétablir",
  undone: (change) => `Annulé : ${change}`,
  redone: (change) => `Rétabli : ${change}`,
  opened: (name) => `ouverture (${name})`,
  named: "nom du réglage",
  cleared: (number) => `effacement (${number})`,
  noSuchNumber: "ce réglage n’a pas ce nombre",
}
