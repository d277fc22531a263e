import type { sceneFaults as english } from "../sceneFaults"

export const sceneFaults: typeof english = {
  at: (place, fault) => `${place}\u00a0: ${fault}`,

  text: (text) => `«\u00a0${text}\u00a0»`,
  nothing: "une valeur vide",
  list: (length) => (length < 2 ? `une liste de ${length} élément` : `une liste de ${length} éléments`),
  object: "un objet",

  number: (given, from, to) => [given, " ne convient pas\u00a0; il faut un nombre entre ", from, " et ", to],
  whole: (given, from, to) => [given, " ne convient pas\u00a0; il faut un nombre entier entre ", from, " et ", to],
  noNumber: (from, to) => ["manque\u00a0; il faut un nombre entre ", from, " et ", to],
  noWhole: (from, to) => ["manque\u00a0; il faut un nombre entier entre ", from, " et ", to],

  unknownKey: "n’est pas une clé de ce format\u00a0; vérifier l’orthographe",
  oneOf: (given, allowed) => `${given} ne convient pas\u00a0; au choix\u00a0: ${allowed}`,
  noneOf: (allowed) => `manque\u00a0; au choix\u00a0: ${allowed}`,
  kindObject: (given, key, allowed) =>
    `${given} ne convient pas\u00a0; il faut un objet avec «\u00a0${key}\u00a0» (${allowed})`,
  noKindObject: (key, allowed) => `manque\u00a0; il faut un objet avec «\u00a0${key}\u00a0» (${allowed})`,
  kind: (key, given, allowed) => `«\u00a0${key}\u00a0» vaut ${given}\u00a0; au choix\u00a0: ${allowed}`,
  noKind: (key, allowed) => `«\u00a0${key}\u00a0» manque\u00a0; au choix\u00a0: ${allowed}`,
  longText: (most) => `trop long\u00a0; ${most} caractères au plus`,
  longList: (most) => `trop long\u00a0; ${most} éléments au plus`,
  shortText: (least) => `trop court\u00a0; ${least} caractères au moins`,
  shortList: (least) => `trop court\u00a0; ${least} éléments au moins`,
  noName: "est vide\u00a0; il faut un nom",
  shape: (given, shape) => `${given} ne convient pas\u00a0; il faut ${shape}`,
  noShape: (shape) => `manque\u00a0; il faut ${shape}`,
  shapes: {
    string: "un texte entre guillemets",
    object: "un objet",
    array: "une liste",
    tuple: "une liste de nombres",
    boolean: "true ou false",
    other: "autre chose",
  },
  unreadable: "ne peut pas être lu",

  drawTooShort: (given, brace) => [given, " ne convient pas\u00a0; il faut plus que le band, ", brace],
  boreTooWide: (given, outer) => [given, " ne convient pas\u00a0; il faut moins que le diamètre extérieur, ", outer],
  wrongWayRound: (from, to) => ["de ", from, " à ", to, "\u00a0: le plus petit nombre vient en premier"],
  noBody:
    "aucun corps n’a ces rayons de giration\u00a0: le carré de chacun ne dépasse pas la somme des deux autres carrés",
  noMount: (mount) =>
    `«\u00a0${mount}\u00a0» est demandé, mais l’arc n’a pas cette fixation\u00a0; ajouter mounts.${mount}`,
  mountTaken: (mount) => `«\u00a0${mount}\u00a0» porte déjà un montage\u00a0; un seul montage par fixation`,
  noRig: "manque\u00a0; «\u00a0rigged\u00a0» dans on dit qu’il y en avait un",
  strayRig: (on) => `est en trop\u00a0; «\u00a0${on}\u00a0» dans on dit qu’il n’y en avait pas`,

  notAScene: (given) => `${given} ne convient pas\u00a0; un réglage est un seul objet JSON`,
  format: (given, format) => `${given} ne convient pas\u00a0; un fichier de réglage dit «\u00a0${format}\u00a0»`,
  version: (given, newest) => `${given} ne convient pas\u00a0; il faut un nombre entier entre 1 et ${newest}`,
  newer: (given, newest) =>
    `version ${given}\u00a0: cet établi lit jusqu’à la version ${newest}. Le fichier vient d’un établi plus récent\u00a0: mettre celui-ci à jour`,

  empty: "le fichier est vide",
  notJson: "ce n’est pas du JSON",
  notJsonAt: (line, column, needed) => `ce n’est pas du JSON\u00a0: ligne ${line}, colonne ${column}\u00a0: ${needed}`,
  endsHere: (needed) => `le fichier s’arrête ici\u00a0; ${needed}`,
  json: {
    value: "il faut une valeur",
    valueOrEnd: "il faut une valeur ou «\u00a0]\u00a0»",
    key: "il faut une clé entre guillemets droits",
    keyOrEnd: "il faut une clé entre guillemets droits ou «\u00a0}\u00a0»",
    colon: "il faut «\u00a0:\u00a0»",
    commaOrBracket: "il faut «\u00a0,\u00a0» ou «\u00a0]\u00a0»",
    commaOrBrace: "il faut «\u00a0,\u00a0» ou «\u00a0}\u00a0»",
    end: "plus rien ne doit suivre",
    control: "un texte ne contient ni retour à la ligne ni autre caractère de commande",
    backslash:
      'une barre oblique inverse ne précède que ", \\, /, b, f, n, r, t ou un u suivi de quatre chiffres hexadécimaux',
    unclosed: "le texte qui commence ici n’a pas de guillemet fermant",
  },

  reading: (number) => `Relevé ${number}`,
  setup: (number) => `Réglage ${number}`,
}
