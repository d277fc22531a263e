import type { KitPiece, KitSection } from "../../scene/kit"
import { newElement } from "../../scene/templates"
import { findSheet } from "../../words/findSheet"

const { extender, rod, damper, weights, vbar } = newElement

/** What a piece looks like before anyone types: the sizes a newly added part has too. */
export const newPiece: { readonly [S in KitSection]: () => KitPiece<S> } = {
  rods: () => ({ name: findSheet.rods.fresh, count: 1, use: "any", ...withoutPart(rod) }),
  extenders: () => ({ name: findSheet.extenders.fresh, count: 1, ...withoutPart(extender) }),
  vbars: () => ({
    name: findSheet.vbars.fresh,
    count: 1,
    ...withoutPart(vbar),
    splayDeg: { from: 30, to: 60, step: 5 },
    droopDeg: { from: 0, to: 0, step: 5 },
  }),
  dampers: () => ({ name: findSheet.dampers.fresh, count: 1, ...withoutPart(damper) }),
  discs: () => ({
    name: findSheet.discs.fresh,
    count: 6,
    eachG: weights.eachG,
    outerMm: weights.outerMm,
    thicknessMm: weights.thicknessMm,
  }),
}

function withoutPart<T extends { part: string; label?: string }>({ part: _, label: __, ...rest }: T) {
  return rest
}
