import type { stopped as english } from "../stopped"

export const stopped: typeof english = {
  title: "L’établi s’est arrêté",
  kept: (setup) =>
    `Quelque chose a échoué dans la page. Le réglage « ${setup} » est toujours là et reste gardé dans ce navigateur.`,
  reload: "Recharger",
  save: "Enregistrer le réglage dans un fichier",
  copy: "Copier les détails",
  startOver: "Commencer avec un nouvel arc",
  sure: "Commencer avec un nouvel arc ? Pour garder ce réglage, l’enregistrer d’abord dans un fichier.",
}
