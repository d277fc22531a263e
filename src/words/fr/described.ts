import type { described as english } from "../described"

export const described: typeof english = {
  recurve: {
    right: (held) => `Arc classique pour droitier, ${held}.`,
    left: (held) => `Arc classique pour gaucher, ${held}.`,
  },
  compound: {
    right: (held) => `Arc à poulies pour droitier, ${held}.`,
    left: (held) => `Arc à poulies pour gaucher, ${held}.`,
  },
  chain: (where, parts) => `${where}\u00a0: ${parts}.`,
  arm: (where, splay, droop, parts) =>
    `${where}\u00a0: écartement ${splay}, inclinaison vers le bas ${droop}, ${parts}.`,
  nothing: "rien dessus",
  piece: (kind, length) => `${kind} de ${length}`,
  discs: (count, mass) => `${count} ${count < 2 ? "disque" : "disques"}, ${mass}`,
  swing: (kind, bob, stem) => `${kind} de ${bob} sur une tige de ${stem}`,
  balance: (ahead, above, aside) => `Point d’équilibre ${ahead}, ${above}, ${aside}.`,
  judged: (ahead, above, aside, target, verdict) =>
    `Point d’équilibre ${ahead}, ${above}, ${aside}\u00a0; ${target}\u00a0: ${verdict}.`,
}
