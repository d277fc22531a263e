import type { draw as english } from "../draw"

export const draw: typeof english = {
  play: {
    heading: "Armer, tenir, désarmer",
    play: "Lancer",
    pause: "Suspendre",
    goOn: "Continuer",
    gesture: "armer, tenir, désarmer",
    begun: "L’arc s’arme, tient et désarme",
    over: "Arc désarmé",
  },
  dryFire: "Ne jamais lâcher la corde d’un arc armé sans flèche. Désarmer en gardant la main sur la corde.",
  curve: {
    heading: "Courbe de traction",
    name: "Force selon l’allonge",
    sketchName: "Force selon l’allonge, une esquisse",
    sketch:
      "Une esquisse\u00a0: les poulies ne sont pas modélisées. Seuls le début, le pic et la force de tenue sont ceux de cet arc.",
    behind: "En pointillé\u00a0: la courbe d’avant ce changement. Elle suivra quand le changement sera terminé.",
    along: (unit) => `corde tirée depuis le grip, ${unit}`,
    force: (unit) => `force sur la corde, ${unit}`,
    end: (weight, amo) => `${weight} à ${amo} AMO`,
    at: (drawn, force, energy) => `Corde tirée à ${drawn}\u00a0: ${force}, ${energy} emmagasinés`,
    atWithHeld: (drawn, force, energy, held) =>
      `Corde tirée à ${drawn}\u00a0: ${force}, ${energy} emmagasinés\u00a0; l’arc gardé ${held}`,
    stored: "Énergie emmagasinée à pleine allonge",
    fullness: "Remplissage, W/(F·allonge)",
    fullnessNote:
      "Le remplissage est l’énergie emmagasinée, divisée par la force multipliée par la course du band à la pleine allonge\u00a0: un demi pour une ligne droite.",
    weight: "Puissance",
    atPeak: (weight) => `${weight} au pic`,
    amo: "Allonge AMO",
    string: "Corde",
  },
  csv: {
    draw: "tirage depuis le grip mm",
    force: "force en N",
    energy: "énergie emmagasinée J",
    held: "force de l’arc gardé N",
  },
  why: {
    heading: "Pourquoi l’équilibre change à pleine allonge",
    caption: "Arc horizontal et sans dévers. La dernière ligne est la somme des autres.",
    cause: "Raison",
    forward: "Point d’équilibre vers l’avant,",
    raises: "Relève l’avant,",
    noMass: "aucune masse déplacée",
    rows: {
      brace: "Au band",
      limbs: "Branches qui reculent",
      string: "Corde tirée",
      arrow: "Flèche ajoutée",
      pull: "Ligne de traction",
      full: "À pleine allonge",
    },
    causes: { limbs: "les branches", string: "la corde", arrow: "la flèche", pull: "la ligne de traction" },
    // With the front as subject the verb need not agree with the cause.
    mostly: {
      raises: {
        raises: (cause, by, rest) =>
          `Surtout ${cause}\u00a0: l’avant en est relevé de ${by}\u00a0; tout le reste ensemble le relève de ${rest}.`,
        lowers: (cause, by, rest) =>
          `Surtout ${cause}\u00a0: l’avant en est relevé de ${by}\u00a0; tout le reste ensemble l’abaisse de ${rest}.`,
      },
      lowers: {
        raises: (cause, by, rest) =>
          `Surtout ${cause}\u00a0: l’avant en est abaissé de ${by}\u00a0; tout le reste ensemble le relève de ${rest}.`,
        lowers: (cause, by, rest) =>
          `Surtout ${cause}\u00a0: l’avant en est abaissé de ${by}\u00a0; tout le reste ensemble l’abaisse de ${rest}.`,
      },
    },
  },
  pull: {
    heading: "Ligne de traction",
    lift: "Moment de levée à pleine allonge",
    net: "Levée nette, poids compris",
    elbow: "Coude de corde au-dessus de la ligne de flèche",
    nock: "Hauteur du point d’encochage au-dessus du grip",
    slider: (name) => `${name}, curseur`,
  },
}
