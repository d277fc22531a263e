import type { readings as english } from "../readings"

export const readings: typeof english = {
  kinds: { scale: "Pesée", hang: "Suspension", swing: "Balancement", twist: "Torsion" },
  on: { riser: "poignée seule", bow: "arc sans stabilisation", rigged: "arc avec sa stabilisation" },
  axes: {
    pitch: "tangage, l’avant monte et descend",
    yaw: "lacet, l’avant va à gauche et à droite",
    roll: "roulis, l’arc prend du dévers",
  },
  unknown: {
    mass: "masse de la poignée",
    forward: "centre de la poignée, vers l’avant",
    up: "centre de la poignée, vers le haut",
    side: "centre de la poignée, vers la droite",
    roll: "rayon de giration de la poignée, roulis",
    yaw: "rayon de giration de la poignée, lacet",
    pitch: "rayon de giration de la poignée, tangage",
  },
  known: {
    yes: "valeur mesurée",
    partly: "valeur connue seulement avec d’autres\u00a0; gardée près de ce qui était supposé",
    no: "valeur non mesurée\u00a0; gardée comme supposée",
  },
  level: "horizontal",
  frontUp: (angle) => `avant relevé de ${angle}`,
  frontDown: (angle) => `avant abaissé de ${angle}`,
  upright: "d’aplomb",
  cantedRight: (angle) => `dévers de ${angle} à droite`,
  cantedLeft: (angle) => `dévers de ${angle} à gauche`,
  cantNotRead: "dévers non lu",
  swings: {
    pitch: (count, time) => `${count} oscillations en ${time}, tangage`,
    yaw: (count, time) => `${count} oscillations en ${time}, lacet`,
    roll: (count, time) => `${count} oscillations en ${time}, roulis`,
  },
  points: {
    grip: "Creux du grip",
    nock: "Corde, au point d’encochage",
    stringTop: "Corde, bout du haut",
    stringBottom: "Corde, bout du bas",
    end: (part) => `${part}, bout extérieur`,
  },
  miss: {
    mass: "masse",
    slope: "pente",
    tilt: "inclinaison de côté",
    ahead: "fil à plomb, vers l’avant",
    aside: "fil à plomb, vers la droite",
    time: "temps",
    unchecked: (what) => `${what}\u00a0: aucun autre relevé ne permet de vérifier`,
    said: (what, off, usual, unseen) =>
      `${what}\u00a0: ${off}\u00a0; ${usual} est habituel\u00a0; une erreur de moins de ${unseen} peut passer inaperçue`,
    none: "conforme à l’ajustement",
    less: (size) => `${size} de moins que l’ajustement`,
    more: (size) => `${size} de plus que l’ajustement`,
  },
  fit: {
    contradict: "Les relevés se contredisent\u00a0: aucune poignée ne leur convient.",
    leaveSomeOut: "En vérifier ou en écarter certains.",
    justEnough: "Il y a juste assez de relevés pour ce qu’ils disent\u00a0: aucun n’en vérifie un autre.",
    agree:
      "Les relevés concordent, à leurs erreurs près. De petites erreurs passent inaperçues\u00a0: chaque relevé dit jusqu’à quelle taille. Des branches ou une stabilisation mal saisies le peuvent aussi.",
    disagree:
      "Les relevés diffèrent plus que leurs erreurs ne le permettent, et en écarter un seul n’y change rien\u00a0: plusieurs sont faux, ils sont moins sûrs qu’indiqué, ou les branches, la corde ou la stabilisation ne sont pas comme saisies. Les ± ci-dessous sont trop petits.",
    held: "Pris tels quels, les relevés donneraient des rayons de giration qu’aucun corps ne peut avoir\u00a0; les plus proches possibles sont retenus.",
    lighter: (reading, mass, rest) =>
      `Le relevé ${reading}, ${mass}, ne dépasse pas les ${rest} que pèsent branches, corde et accessoires tels que saisis\u00a0: il ne reste rien pour la poignée. Vérifier le relevé, ce qui était sur la balance, et ces pièces. D’ici là, ni les nombres ci-dessous ni leurs ± ne valent.`,
    lighterRigged: (reading, mass, rest) =>
      `Le relevé ${reading}, ${mass}, ne dépasse pas les ${rest} que pèsent branches, corde, accessoires et stabilisation tels que saisis\u00a0: il ne reste rien pour la poignée. Vérifier le relevé, ce qui était sur la balance, et ces pièces. D’ici là, ni les nombres ci-dessous ni leurs ± ne valent.`,
  },
  suspects: {
    reading: (reading) => `relevé ${reading}`,
    or: (first, last) => `${first} ou ${last}`,
    one: (reading) =>
      `Le relevé ${reading} est très loin des autres\u00a0: sans lui, ils concordent. Le refaire, ou l’écarter. D’ici là, ni les nombres ci-dessous ni leurs ± ne valent.`,
    either: (list) =>
      `${list}\u00a0: l’un d’eux est très loin du compte\u00a0; refaire les deux. Sans l’un ou l’autre, le reste concorde\u00a0: les relevés ne peuvent donc pas dire lequel\u00a0; d’ici là, ni les nombres ci-dessous ni leurs ± ne valent.`,
    anyOf: (list) =>
      `${list}\u00a0: l’un d’eux est très loin du compte\u00a0; les refaire tous. Sans l’un quelconque d’entre eux, le reste concorde\u00a0: les relevés ne peuvent donc pas dire lequel\u00a0; d’ici là, ni les nombres ci-dessous ni leurs ± ne valent.`,
    mark: "Très loin des autres\u00a0: le refaire, ou l’écarter",
    markOfSeveral: "Peut-être très loin des autres\u00a0: le refaire",
  },
  now: {
    determined: (within) =>
      `Le point d’équilibre de l’arc avec sa stabilisation actuelle est connu à ${within} près, vers l’avant, en hauteur et de côté ensemble.`,
    undetermined: (within) =>
      `Les relevés ne suffisent pas à déterminer le point d’équilibre de l’arc avec sa stabilisation actuelle. On le suppose à moins de ${within} de la position affichée, vers l’avant, en hauteur et de côté ensemble, comme pour une poignée ordinaire.`,
    unread: (within) =>
      `Aucune mesure ne dit encore où est le point d’équilibre de l’arc avec sa stabilisation actuelle. On le suppose à moins de ${within} de la position affichée, vers l’avant, en hauteur et de côté ensemble, comme pour une poignée ordinaire.`,
  },
}
