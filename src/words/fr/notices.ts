import type { notices as english } from "../notices"

export const notices: typeof english = {
  notDone: "Rien n’a été fait.",
  more: (count) => `et ${count} de plus`,
  close: "Fermer",
  partAway: "La partie de la page qui s’en charge n’a pas pu être chargée. Le réseau est-il là ?",
  rulesAway:
    "La partie de la page qui vérifie un réglage entier n’a pas pu être chargée. Les nombres sont vérifiés quand même ; un réglage avec des pièces ajoutées pourrait ne plus s’ouvrir. Le réseau est-il là ?",
  notKept:
    "Ce navigateur ne garde pas le travail non enregistré (sa mémoire est pleine ou désactivée). Enregistrer dans un fichier avant de quitter la page.",
  back: (time) => `Le travail non enregistré du ${time} est de retour.`,
  kept: (time, more) =>
    more === 0
      ? `Un travail non enregistré du ${time} est gardé.`
      : `Un travail non enregistré du ${time} est gardé, et ${more} de plus.`,
  bringBack: "Le reprendre",
  addressNotOpened: "Le réglage de l’adresse n’a pas été ouvert.",
  unread:
    "Un travail antérieur est gardé dans ce navigateur, mais la partie de la page qui le lit n’a pas pu être chargée. Recharger la page quand le réseau est là.",
}
