import { spoken } from "./language"

/** The picture in sentences, for those who do not see it. */
export const described = spoken("described", {
  /** `held` is "at brace, 15° up, upright". */
  recurve: {
    right: (held: string) => `A right-handed recurve bow, ${held}.`,
    left: (held: string) => `A left-handed recurve bow, ${held}.`,
  },
  compound: {
    right: (held: string) => `A right-handed compound bow, ${held}.`,
    left: (held: string) => `A left-handed compound bow, ${held}.`,
  },
  /** `where` is a mount or an arm with a capital; `parts` what hangs there, from the bow outward, or `nothing`. */
  chain: (where: string, parts: string) => `${where}: ${parts}.`,
  arm: (where: string, splay: string, droop: string, parts: string) =>
    `${where}: splay ${splay}, droop ${droop}, ${parts}.`,
  nothing: "nothing on it",
  piece: (kind: string, length: string) => `${kind} ${length}`,
  discs: (count: number, mass: string) => `${count === 1 ? "1 disc" : `${count} discs`}, ${mass}`,
  swing: (kind: string, bob: string, stem: string) => `${kind} of ${bob} on ${stem}`,
  balance: (ahead: string, above: string, aside: string) => `Balance point ${ahead}, ${above}, ${aside}.`,
  /** The same with "target 300–310 mm" and how it stands to that. */
  judged: (ahead: string, above: string, aside: string, target: string, verdict: string) =>
    `Balance point ${ahead}, ${above}, ${aside}; ${target}: ${verdict}.`,
})
