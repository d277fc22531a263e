import type { links as english } from "../links"

export const links: typeof english = {
  opened: (setup) => `${setup}\u00a0: ouvert depuis un lien`,
  notOpened: "Le réglage du lien n’a pas été ouvert\u00a0; l’établi est resté comme il était.",
  notCompared: "Le réglage du lien n’a pas été comparé\u00a0; l’établi est resté comme il était.",
  tooLong: "le lien est bien trop long pour un réglage",
  nothing: "il n’y a pas de réglage dans le lien",
  noLesson: "il n’y a pas de leçon dans le lien",
  lessonNotOpened: "La leçon du lien n’a pas été ouverte\u00a0; l’établi est resté comme il était.",
  newer: (version, known) =>
    `le lien est de la version ${version}, faite par un établi plus récent\u00a0; celui-ci lit la version ${known}. Recharger la page pour avoir la dernière`,
  damaged: "le lien est abîmé\u00a0: un morceau manque ou a été changé en route",
  tooLarge: "le lien contient bien plus qu’un réglage",
}
