import type { hills as english } from "../hills"

export const hills: typeof english = {
  picture: {
    heading: "Ce que montre l’image",
    noSwing:
      "Cette stabilisation n’a pas de masse oscillante. En ajouter une sur la feuille Montage, ou laisser la recherche ci-dessous en suspendre une.",
    hillRises: (angle) =>
      `Le terrain monte de ${angle} vers la cible\u00a0: l’avant est relevé d’autant. L’arc tourne\u00a0; la pesanteur et le fil à plomb, non.`,
    hillFalls: (angle) =>
      `Le terrain descend de ${angle} vers la cible\u00a0: l’avant est abaissé d’autant. L’arc tourne\u00a0; la pesanteur et le fil à plomb, non.`,
    noHill: "Terrain plat\u00a0: la cible est à la hauteur de l’archer.",
  },
  held: {
    level: "Arc horizontal",
    raised: (angle) => `Avant relevé de ${angle}`,
    lowered: (angle) => `Avant abaissé de ${angle}`,
    right: (angle) => `dévers de ${angle} à droite`,
    left: (angle) => `dévers de ${angle} à gauche`,
    onlyCanted: (canted) => `À l’horizontale, ${canted}`,
    both: (slope, canted) => `${slope}, ${canted}`,
  },
  // The name stands by itself in front of its colon: it may be a label of the coach's own, of any gender.
  hangs: {
    onStop: (held, name, down, plumb) =>
      `${held}. ${name}\u00a0: en butée, à ${down} du bas de l’arc et à ${plumb} de l’aplomb.`,
    hinged: (held, name, leans, plumb) =>
      `${held}. ${name}\u00a0: pend ${leans} dans le repère de l’arc\u00a0; sa charnière ne tourne que dans le plan de l’arc, et le dévers la laisse à ${plumb} de l’aplomb.`,
    down: (held, name) => `${held}. ${name}\u00a0: pend tout droit, dans le repère de l’arc comme dans le monde.`,
    aside: (held, name, down) =>
      `${held}. ${name}\u00a0: pend à ${down} sur le côté dans le repère de l’arc, mais à l’aplomb dans le monde.`,
    plumb: (held, name, leans) =>
      `${held}. ${name}\u00a0: pend ${leans} dans le repère de l’arc, mais à l’aplomb dans le monde.`,
    straight: "tout droit",
    toArcher: (angle) => `à ${angle} vers l’archer`,
    toTarget: (angle) => `à ${angle} vers la cible`,
  },
  slopes: {
    heading: "Levée nette en pente, à pleine allonge",
    name: "Levée nette selon la pente",
    along: "pente, ° (descente − / montée +)",
    netLift: (unit) => `levée nette, ${unit}`,
    rig: "tel quel",
    locked: "bloquée",
    without: "sans",
    at: (slope, lift) => `${slope}\u00a0: levée nette ${lift}.`,
    atWithHeld: (slope, lift, held) => `${slope}\u00a0: levée nette ${lift}\u00a0; réglage gardé ${held}.`,
    swingAt: (slope, lift, locked, without) =>
      `${slope}\u00a0: levée nette ${lift}\u00a0; masse bloquée ${locked}, sans elle ${without}.`,
    swingAtWithHeld: (slope, lift, locked, without, held) =>
      `${slope}\u00a0: levée nette ${lift}\u00a0; masse bloquée ${locked}, sans elle ${without}\u00a0; réglage gardé ${held}.`,
    spread: (degrees) => `Étendue sur ±${degrees}°, tel quel`,
    spreadLocked: "De même, masse bloquée",
    spreadWithout: "De même, sans elle",
    spreadHeld: "Le réglage gardé pour comparer",
    spreadNote:
      "L’étendue est la plus grande levée nette moins la plus petite\u00a0; 0 est un arc qui tient pareil dans toutes les pentes.",
    takes: {
      flatter: (size, without) =>
        `Libre, la masse retire ${size} à l’étendue qu’elle donne bloquée\u00a0; sans elle l’arc serait plus régulier, avec ${without}.`,
      lessFlat: (size, without) =>
        `Libre, la masse retire ${size} à l’étendue qu’elle donne bloquée\u00a0; sans elle l’arc serait moins régulier, avec ${without}.`,
    },
    adds: {
      flatter: (size, without) =>
        `Libre, la masse ajoute ${size} à l’étendue qu’elle donne bloquée\u00a0; sans elle l’arc serait plus régulier, avec ${without}.`,
      lessFlat: (size, without) =>
        `Libre, la masse ajoute ${size} à l’étendue qu’elle donne bloquée\u00a0; sans elle l’arc serait moins régulier, avec ${without}.`,
    },
    csv: {
      slope: "pente deg",
      net: "levée nette N·m",
      locked: "levée nette masse bloquée N·m",
      without: "levée nette sans masse oscillante N·m",
      held: "levée nette du réglage gardé N·m",
    },
  },
  motion: {
    heading: "Masse oscillante en mouvement",
    headingOfSeveral: "Masses oscillantes en mouvement",
    closeUp: "Gros plan sur",
    still: (name) =>
      `${name}\u00a0: à ce dévers, sa rotule s’appuie de côté sur sa butée. La masse compte comme bloquée et n’est pas suivie.`,
    to: "Jusqu’à une pente de",
    rate: "Au plus, par seconde",
    start: "Lancer",
    instead: "Changer de but",
    reset: "Remettre au départ",
    figuresStay: "Pendant le mouvement, les grands chiffres restent ceux de l’arc tel qu’il est tenu.",
    back: "Reculer",
    on: "Avancer",
    inPicture: (time) => `${time} dans l’image`,
    before:
      "L’arc de la grande image bouge avec, puis revient à sa tenue une fois le mouvement fini. En tirets\u00a0: la masse bloquée là où elle pend maintenant. Les courbes se tracent dès que l’arc bouge.",
    sharedNames: (list) => `${list}. Les lignes superposées portent un seul nom.`,
    listed: (number, name) => `${number}\u00a0: ${name}`,
    angles: "Écart à l’aplomb dans le temps",
    fromPlumb: "écart à l’aplomb, °",
    moments: "Moment de piqué dans le temps",
    noseDown: (unit) => `moment de piqué, ${unit}`,
    momentNote:
      "Le moment est ce que la masse apporte au grip, avec tout ce qu’il faut pour la mouvoir. En tirets\u00a0: la masse bloquée là où elle était au départ.",
    momentNoteOfSeveral:
      "Le moment est ce que toutes les masses ensemble apportent au grip, avec tout ce qu’il faut pour les mouvoir\u00a0; en trait fin, chacune à part. En tirets\u00a0: toutes bloquées là où elles étaient au départ.",
    bow: "arc",
    weight: "masse",
    locked: "bloquée",
    lockedOf: (numbers) => `bloquée ${numbers}`,
    free: "libre",
    allFree: "libres",
    allLocked: "bloquées",
    bowStill: "arc immobile",
    plumb: "aplomb",
    toTarget: "vers la cible →",
    at: (time, bow, weight, free, locked) =>
      `${time}\u00a0: arc ${bow}, masse ${weight}\u00a0; moment de piqué ${free} libre, ${locked} bloquée.`,
    atOfSeveral: (time, bow, weights, free, locked) =>
      `${time}\u00a0: arc ${bow}, ${weights}\u00a0; moment de piqué de l’ensemble ${free} libres, ${locked} bloquées.`,
    numbered: (number, where) => `masse ${number} ${where}`,
    isPlumb: "à l’aplomb",
    ahead: (angle) => `à ${angle} en avant de l’aplomb`,
    behind: (angle) => `à ${angle} en arrière de l’aplomb`,
    byFriction: (where) => `${where}, retenue par le frottement`,
    onStop: (where) => `${where}, en butée`,
    csv: {
      time: "temps s",
      slope: "pente deg",
      weight: "masse",
      fromPlumb: (of) => `${of} écart à l’aplomb deg`,
      inBow: (of) => `${of} dans le repère de l’arc deg`,
      freeOf: (of) => `${of} moment de piqué libre N·m`,
      lockedOf: (of) => `${of} moment de piqué bloquée N·m`,
      free: "moment de piqué libre N·m",
      locked: "moment de piqué bloquée N·m",
    },
  },
  flattest: {
    heading: "Suspension la plus régulière",
    note: "Essaie tous les endroits, tiges et masselottes pour la plus petite étendue de la levée nette. L’articulation, la butée et la taille de la masselotte restent.",
    what: "Quoi suspendre",
    all: "Toutes les masses oscillantes de l’arc, comme une seule",
    fresh: "Une nouvelle masse oscillante",
    stem: "Tige",
    bob: "Masselotte",
    from: "de",
    to: "à",
    step: "par pas de",
    where: "Où la suspendre",
    noMount: "Cet arc n’a aucune fixation où suspendre une masse.",
    search: "Chercher",
    cancel: "Arrêter",
    tries: "Essais faits",
    ofStem: { from: "Tige, de", to: "Tige, à", step: "Tige, pas" },
    ofBob: { from: "Masselotte, de", to: "Masselotte, à", step: "Masselotte, pas" },
    wrong: (which, why) => `${which}\u00a0: ${why}.`,
    allTried: (total, spread) =>
      `${total < 2 ? `${total} essai fait` : `Les ${total} essais sont faits`}. Le meilleur à chaque endroit\u00a0; l’étendue est actuellement de ${spread}.`,
    stopped: (tried, total, spread) =>
      `Arrêt après ${tried} ${tried < 2 ? "essai" : "essais"} sur ${total}. Le meilleur à chaque endroit\u00a0; l’étendue est actuellement de ${spread}.`,
    changed: "L’arc a changé depuis\u00a0: chercher de nouveau pour en essayer un.",
    tryIt: "Essayer",
    tryThis: (hang) => `Essayer\u00a0: ${hang}`,
    hung: (hang) => `Suspendu\u00a0: ${hang}. Annuler l’enlève.`,
    size: (stem, bob) => `tige ${stem}, masselotte ${bob}`,
    effect: (spread, mass) => `étendue ${spread}\u00a0; l’arc entier ${mass}`,
    chainEnd: (mount) => `Bout du montage ${mount}`,
    bothArms: (mount, vbar) => {
      const which = [mount, vbar].filter((word) => word !== "").join(", ")
      return which === "" ? "les deux bras" : `les deux bras (${which})`
    },
  },
}
