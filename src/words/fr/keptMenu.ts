import type { keptMenu as english } from "../keptMenu"

export const keptMenu: typeof english = {
  title: "Travail gardé",
  about:
    "Du travail non enregistré qui a laissé la place à un autre arc. Il reste dans ce navigateur jusqu’à ce qu’il soit repris ou jeté.",
  bringBack: "Le reprendre",
  discard: "Jeter",
  bringBackThis: (name) => `Reprendre ${name}`,
  discardThis: (name) => `Jeter ${name}`,
  isBack: (name) => `${name} est de retour`,
  isGone: (name) => `Jeté : ${name} ; Annuler le fait revenir`,
  notBack: "Ce travail n’a pas été repris.",
  broughtBack: (name) => `reprise (${name})`,
  discarded: (name) => `mise au rebut (${name})`,
}
