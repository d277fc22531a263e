import type { lessonFaults as english } from "../lessonFaults"

export const lessonFaults: typeof english = {
  noObject: (given) => `${given} donné\u00a0; une leçon est un seul objet JSON`,
  otherFormat: (given, format) => `${given} donné\u00a0; un fichier de leçon dit «\u00a0${format}\u00a0»`,
  newer: (version, known) =>
    `${version} donné\u00a0; cet établi lit jusqu’à ${known}. La leçon a été écrite pour un établi plus récent\u00a0: mettre celui-ci à jour`,
  manyScenes: (given, most) => `${given} données\u00a0; ${most} scènes au plus sont prises`,
  sceneMissing: "manque\u00a0; la première étape a besoin d’une scène",
  sceneUnknown: (given, known) =>
    `«\u00a0${given}\u00a0» donné\u00a0; il faut une des scènes de cette leçon\u00a0: ${known}`,
  within: (place, inner) => `${place}, dedans ${inner}`,
  noNumber: "cette scène n’a pas ce nombre",
  keyUnknown: (key) => `«\u00a0${key}\u00a0» donné\u00a0; cette scène n’a pas ce nombre`,
  keyEmpty: (key) => `«\u00a0${key}\u00a0» donné\u00a0; ce réglage n’a pas ce nombre`,
  untouched: "donné dans une étape où rien ne peut être touché\u00a0; mettre touch sur true",
  spanTurned: (to, from) => `${to} donné\u00a0; il ne faut pas moins de ${from}`,
  oneForm: "il faut un seul de becomes, times et changes",
  noneTrue: (...told) => `aucun des choix n’est ce que disent les chiffres, il en faut un. ${told.join("\u00a0; ")}`,
  moreTrue: (count, ...told) =>
    `${count} des choix sont ce que disent les chiffres, il en faut un. ${told.join("\u00a0; ")}`,
  goes: (number, from, to) => `${number}\u00a0: de ${from} à ${to}`,
  controlTurned: (to, from) => `${to} donné\u00a0; il faut plus de ${from}`,
  controlOutside: (from, to, begins) =>
    `${from} à ${to} donné, mais une étape où l’on peut y toucher commence à ${begins}`,
  noGoal: (given) => `${given} donné, mais cette étape n’a pas de but`,
  placeholder: (given) =>
    `${given} donné\u00a0; il faut {goal}, ou {now …}, {held …}, {change …}, {times …} ou {next …} avec la clé d’un nombre`,
  nothingNext: (given) => `${given} donné, mais rien n’est à prédire ici`,
  tellsAnswer: (given) => `${given} donné, ce qui dirait la réponse\u00a0; il faut la clé d’un réglage`,
  nothingHeld: (given) => `${given} donné, mais aucun réglage n’est gardé ici pour comparer`,
  called: (given, key) => `${given} donné\u00a0; aucun nombre de ce réglage ne s’appelle «\u00a0${key}\u00a0»`,
}
