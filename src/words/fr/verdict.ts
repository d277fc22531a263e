import type { verdict as english } from "../verdict"

export const verdict: typeof english = {
  missed: (by, way) => `${by} ${way}`,
  forward: { under: "trop en arrière", over: "trop en avant" },
  up: { under: "trop bas", over: "trop haut" },
  side: { under: "trop à gauche", over: "trop à droite" },
  lift: { under: "de levée en moins", over: "de levée en trop" },
  heavy: "de trop",
  lessThan: (amount) => `moins de ${amount}`,
  inside: "dans l’objectif",
  within: "dans la limite",
  noTarget: "pas d’objectif fixé",
  noLimit: "pas de limite fixée",
  target: (span) => `visé ${span}`,
  atMost: (mass) => `${mass} au plus`,
  fromTo: (from, to) => `${from} à ${to}`,
  balanced: "équilibré",
  rises: "l’avant monte",
  drops: "l’avant descend",
  assumed: "si la poignée est comme supposé",
}
