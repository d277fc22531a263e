import fc from "fast-check"

/** Every place in a document: the steps to it. */
function places(node: unknown, here: (string | number)[] = []): (string | number)[][] {
  if (node === null || typeof node !== "object") return [here]
  const keys = Array.isArray(node) ? node.map((_, index) => index) : Object.keys(node)
  return [here, ...keys.flatMap((key) => places((node as Record<string | number, unknown>)[key], [...here, key]))]
}

const odd = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom(null, true, -1, 0, 1e308, -1e308, 5e-324, 1.5, "", "rod", "__proto__", [], {}, [[]], { part: "rod" }),
  fc.double(),
)

/** A document with one place of it replaced, removed, or given one key more. */
export const mutated = (documents: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc
    .tuple(documents, fc.nat(), odd, fc.constantFrom("replace", "remove", "extend"), fc.string())
    .map(([valid, which, value, how, key]) => {
      const document = structuredClone(valid)
      const all = places(document).filter((each) => each.length > 0)
      const place = all[which % all.length]!
      const last = place.at(-1)!
      const holder = place
        .slice(0, -1)
        .reduce((node, step) => (node as Record<string | number, unknown>)[step], document) as Record<
        string | number,
        unknown
      >
      if (how === "remove") delete holder[last]
      else if (how === "replace") holder[last] = value
      else if (!Array.isArray(holder)) holder[key] = value
      return document
    })
