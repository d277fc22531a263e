import { type AxialBody, NO_BODY } from "../../core/find"
import { compose } from "../../core/solids"
import { chainParts, elementMassG } from "../assemble"
import type { Kit } from "../kit/schema"
import type { ArmElement, Element, PartOf } from "../schema"

/** A chain that can be built from the kit, the pieces it takes, and what it weighs where. */
export interface ChainOption {
  readonly elements: readonly Element[]
  /** Kinds of pieces taken, by their place in `kindsOf`, once for each piece. */
  readonly takes: readonly number[]
  readonly body: AxialBody
}

/** Every kind of piece of a kit in a fixed order, as it goes on a rig. A V-bar has no arms yet; discs are one disc. */
export interface Kinds {
  readonly stock: readonly number[]
  readonly names: readonly string[]
  readonly rods: readonly {
    readonly kind: number
    readonly use: "front" | "side" | "any"
    readonly part: PartOf<"rod">
  }[]
  readonly extenders: readonly { readonly kind: number; readonly part: PartOf<"extender"> }[]
  readonly vbars: readonly {
    readonly kind: number
    readonly part: PartOf<"vbar">
    readonly entry: Kit["vbars"][number]
  }[]
  readonly dampers: readonly { readonly kind: number; readonly part: PartOf<"damper"> }[]
  readonly discs: readonly { readonly kind: number; readonly part: PartOf<"weights"> }[]
}

export function kindsOf(kit: Kit): Kinds {
  const stock: number[] = []
  const names: string[] = []
  const kind = ({ count, name }: { count: number; name: string }) => {
    names.push(name)
    return stock.push(count) - 1
  }
  return {
    stock,
    names,
    rods: kit.rods.map(({ use, ...entry }) => ({ kind: kind(entry), use, part: { part: "rod", ...labelled(entry) } })),
    extenders: kit.extenders.map((entry) => ({ kind: kind(entry), part: { part: "extender", ...labelled(entry) } })),
    vbars: kit.vbars.map((entry) => {
      const { splayDeg: _splay, droopDeg: _droop, ...bar } = entry
      return { kind: kind(entry), entry, part: { part: "vbar", ...labelled(bar) } }
    }),
    dampers: kit.dampers.map((entry) => ({ kind: kind(entry), part: { part: "damper", ...labelled(entry) } })),
    discs: kit.discs.map((entry) => ({ kind: kind(entry), part: { part: "weights", ...labelled(entry), count: 1 } })),
  }
}

/** A piece as it is written on a rig: its name becomes the part's label. */
function labelled<T extends { name: string; count: number }>({ name, count: _, ...rest }: T) {
  return { label: name, ...rest }
}

interface Ends {
  readonly elements: readonly ArmElement[]
  readonly takes: readonly number[]
}

/**
 * Every stack of up to `most` discs, none first: kinds in the kit's order from the inside out, one weights part for
 * each kind.
 */
export function stacksOf({ discs, stock }: Kinds, most: number): Ends[] {
  let stacks: { elements: ArmElement[]; takes: number[] }[] = [{ elements: [], takes: [] }]
  for (const { kind, part } of discs) {
    stacks = stacks.flatMap((stack) =>
      Array.from({ length: Math.min(stock[kind]!, most - stack.takes.length) + 1 }, (_, count) =>
        count === 0
          ? stack
          : {
              elements: [...stack.elements, { ...part, count }],
              takes: [...stack.takes, ...new Array<number>(count).fill(kind)],
            },
      ),
    )
  }
  return stacks
}

/** How many `stacksOf` will list. */
export function stackCount({ discs, stock }: Kinds, most: number): number {
  let byLength = [1]
  for (const { kind } of discs) {
    const next = new Array<number>(most + 1).fill(0)
    byLength.forEach((ways, length) => {
      for (let count = 0; count <= Math.min(stock[kind]!, most - length); count++) next[length + count]! += ways
    })
    byLength = next
  }
  return byLength.reduce((sum, ways) => sum + ways, 0)
}

/**
 * Chains of at most an extender, a rod, a damper and a stack, in that order, without those that load a rod past its
 * maker's rated end weight. `arm`: for a V-bar's arm, where nothing hangs without a rod; `none`: it may be missing.
 */
export function chainOptions(
  kinds: Kinds,
  stacks: readonly Ends[],
  { arm, extenders, none, rod: needsRod }: { arm: boolean; extenders: boolean; none: boolean; rod: boolean },
): ChainOption[] {
  const rods = kinds.rods.filter(({ use, kind }) => use !== (arm ? "front" : "side") && kinds.stock[kind]! > 0)
  const inner = extenders ? [null, ...kinds.extenders] : [null]
  const ends = [null, ...kinds.dampers].flatMap((damper) =>
    stacks.map((stack): Ends => (damper === null ? stack : before(damper, stack))),
  )
  const options: ChainOption[] = []
  for (const extender of inner) {
    for (const rod of arm || needsRod ? rods : [null, ...rods]) {
      const limit = rod?.part.maxEndWeightG
      for (const end of ends) {
        if (limit !== undefined && massG(end.elements) > limit + RATING_SLACK_G) continue
        const outer = rod === null ? end : before(rod, end)
        options.push(chainOption(extender === null ? outer : before(extender, outer)))
      }
    }
  }
  return none && arm ? [chainOption({ elements: [], takes: [] }), ...options] : options
}

/** Rounding of a sum of a few disc masses, g: a stack that weighs just what is rated is allowed. */
const RATING_SLACK_G = 1e-9

const before = ({ kind, part }: { kind: number; part: ArmElement }, { elements, takes }: Ends): Ends => ({
  elements: [part, ...elements],
  takes: [kind, ...takes],
})

const massG = (elements: readonly ArmElement[]): number =>
  elements.reduce((sum, element) => sum + (element.part === "swing" ? 0 : elementMassG(element)), 0)

export const chainOption = ({ elements, takes }: { elements: readonly Element[]; takes: readonly number[] }) => ({
  elements,
  takes,
  body: axialBody(elements),
})

/** What coaxial elements weigh along their line, found by laying them along x from the origin. */
function axialBody(elements: readonly Element[]): AxialBody {
  if (elements.length === 0) return NO_BODY
  const parts = chainParts(elements, [0, 0, 0], [1, 0, 0], "", [], [0, -1, 0])
  const { mass, centre, aboutOrigin } = compose(parts.flatMap(({ solids }) => solids))
  const pieces = parts.flatMap(({ axis }) =>
    axis === undefined ? [] : [{ from: axis.start[0], to: axis.start[0] + axis.length, radius: axis.outerRadius }],
  )
  return { mass, along: mass * centre[0], axial: aboutOrigin.xx, across: aboutOrigin.zz, pieces }
}
