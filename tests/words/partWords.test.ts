import { describe, expect, it } from "vitest"
import { partWords } from "../../src/words/fr/partWords"
import { places } from "../../src/words/fr/places"

describe("the names of parts in French", () => {
  it("put the side behind the part, and what tells arms apart behind that", () => {
    expect(partWords.onMount(partWords.mounts.upper, partWords.kinds.rod)).toBe("stabilisateur en haut")
    const left = partWords.arm(partWords.sides.left, "", "")
    expect(partWords.onArm(left, partWords.kinds.rod)).toBe("stabilisateur côté gauche")
    const other = partWords.arm(partWords.sides.right, partWords.mounts.back, "V-bar 2")
    expect(partWords.armTitle(other)).toBe("bras droit (arrière, V-bar 2)")
  })

  it("say how far in front of the way", () => {
    expect(places.ahead("62 mm")).toBe("62 mm devant")
  })
})
