import type { findFaults as english } from "../findFaults"

export const findFaults: typeof english = {
  nothing: "rien ne peut être monté\u00a0: il manque dans la boîte une pièce qui doit être là",
  tooMany: (many) =>
    `${many} possibilités\u00a0; il faut moins de disques par pile, des angles plus espacés ou moins de fixations`,
  noMounts: "vide\u00a0; il faut au moins une fixation à garnir",
  mountTwice: "une fixation est nommée deux fois",
  noMount: (mount) => `l’arc n’a pas de fixation «\u00a0${mount}\u00a0»`,
  swingOn: (mount) =>
    `«\u00a0${mount}\u00a0» porte une masse oscillante et la boîte n’en a pas\u00a0: laisser cette fixation de côté`,
  otherMount: (mount) => `«\u00a0${mount}\u00a0» n’est pas parmi les fixations à garnir`,
  noVbar: "un V-bar doit être là, mais la boîte n’en a pas",
  noFrontRod: "un stabilisateur avant doit être là, mais la boîte n’en a pas",
}
