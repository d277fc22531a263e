import type { search as english } from "../search"

export const search: typeof english = {
  best: {
    nearest: "le plus proche du milieu des objectifs",
    lightest: "le plus léger",
    steadiest: "celui qui résiste le plus à la rotation",
    steadyForMass: "celui qui résiste le plus à la rotation pour sa masse",
  },
  limits: {
    reachForward: "encombrement de la stabilisation vers l’avant",
    reachSide: "encombrement de la stabilisation sur le côté",
    pitch: "résistance en tangage",
    yaw: "résistance en lacet",
    roll: "résistance en roulis",
  },
  covered: {
    underway: (share, all) => `Combinaisons couvertes\u00a0: ${share} de ${all}.`,
    proved: (all) => `Toutes les combinaisons (${all}) sont couvertes\u00a0: cette liste est prouvée.`,
    stopped: (share, all) =>
      `Recherche arrêtée à ${share} de ${all} combinaisons\u00a0: le meilleur jusqu’ici, non prouvé.`,
  },
  outcome: {
    brokeOff: (trouble) => `La recherche s’est interrompue (${trouble}).`,
    nothingYet: "Rien trouvé pour l’instant.",
    none: (all) =>
      `Aucun réglage de cette boîte ne respecte toutes les limites\u00a0; toutes les combinaisons (${all}) sont couvertes.`,
  },
  earlier: {
    bow: "l’arc",
    kit: "la boîte",
    question: "la question",
    one: (what) => `${what} d’avant`,
    list: (earlier, then) =>
      `Cette liste correspond à ${earlier}\u00a0: ${then}. Elle ne prouve rien pour ce qui est demandé maintenant\u00a0; relancer la recherche.`,
    answer: (earlier, then) =>
      `Cette réponse concerne ${earlier}\u00a0: ${then}. Elle ne prouve rien pour ce qui est demandé maintenant\u00a0; relancer la recherche.`,
    coveredThen: (all) => `toutes les combinaisons (${all}) étaient alors couvertes`,
    partlyCoveredThen: (share, all) => `${share} des ${all} combinaisons étaient alors couvertes`,
  },
  between: "\u00a0; ",
  lostOne: (why) => `Une tâche de calcul de cette recherche s’est perdue (${why})\u00a0; une autre refait sa part.`,
  lostSome: (workers, why) =>
    `${workers} tâches de calcul de cette recherche se sont perdues (${why})\u00a0; d’autres refont leur part.`,
  slept: (time) => `La page était en veille pendant ${time}\u00a0; la recherche reprend où elle en était.`,
  cutOff:
    "La dernière recherche a été coupée quand la page a été fermée ou mise en veille. La boîte et ce qui est voulu sont gardés\u00a0: relancer la recherche.",
  noBand: (title, from, to) =>
    `${title}\u00a0: de ${from} à ${to}, ce n’est pas une plage\u00a0; «\u00a0à\u00a0» ne doit pas être inférieur à «\u00a0de\u00a0».`,
  quoted: (field) => `«\u00a0${field}\u00a0»`,
  wrongField: (field) =>
    `Recherche non lancée\u00a0: la valeur de ${field} n’est pas acceptable telle quelle. La corriger d’abord.`,
  wrongFields: (fields) =>
    `Recherche non lancée\u00a0: les valeurs de ${fields} ne sont pas acceptables telles quelles. Les corriger d’abord.`,
  and: (first, last) => `${first} et ${last}`,
  missed: {
    nothing: (title) => `${title}\u00a0: rien à construire.`,
    outOfReach: (title, nearest, by) =>
      `${title}\u00a0: limite hors de portée de cette boîte\u00a0; le plus proche est ${nearest}, soit ${by} d’écart.`,
    alone: (title) =>
      `${title}\u00a0: limite tenable à elle seule\u00a0; les autres ne peuvent pas être tenues toutes ensemble.`,
    binds: (title, nearest, by) =>
      `${title}\u00a0: c’est cette limite qui bloque\u00a0; les autres étant tenues, le plus proche est ${nearest}, soit ${by} d’écart.`,
    met: (title) => `${title}\u00a0: limite tenue.`,
  },
  recheck: "Revérifier tous les filetages après chaque changement.",
  accuracy:
    "Les chiffres valent ce que valent les masses et les longueurs saisies\u00a0: ils sont calculés, non mesurés. Vérifier l’équilibre sur l’arc.",
  rig: {
    bare: "rien sur l’arc",
    front: (parts) => `Avant\u00a0: ${parts}`,
    back: (parts) => `Arrière\u00a0: ${parts}`,
    upper: (parts) => `Haut\u00a0: ${parts}`,
    lower: (parts) => `Bas\u00a0: ${parts}`,
    nothing: "rien",
    arm: (angles, parts) => `${angles}\u00a0: ${parts}`,
    left: (vbar, arm) => `${vbar} (gauche ${arm})`,
    right: (vbar, arm) => `${vbar} (droite ${arm})`,
    alike: (vbar, arm) => `${vbar} (les deux ${arm})`,
    unlike: (vbar, left, right) => `${vbar} (gauche ${left}\u00a0; droite ${right})`,
  },
}
