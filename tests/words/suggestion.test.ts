import { expect, test } from "vitest"
import { handle } from "../../src/words/fr/handle"
import { rigSteps } from "../../src/words/fr/rigSteps"
import { suggestion } from "../../src/words/fr/suggestion"

const { rod, extender, bare } = suggestion

test("a change in French has its articles from what it touches", () => {
  expect(suggestion.off(suggestion.discs(1), suggestion.stack(rod.front, 2))).toBe(
    "1 disque de moins sur le stabilisateur avant (pile 2)",
  )
  expect(suggestion.addStack(suggestion.discs(3), rod.each(""))).toBe("3 disques en nouvelle pile sur chaque latéral")
  expect(suggestion.longer(extender.both(suggestion.onVbar.back("2")), "105,0 → 110,0 mm")).toBe(
    "Changer les deux extensions latérales (V-bar 2, fixation arrière) pour une longueur supérieure, 105,0 → 110,0 mm",
  )
  expect(suggestion.rightToLeft(suggestion.discs(2), bare.one(""))).toBe(
    "2 disques de droite à gauche, d’un bras à l’autre",
  )
})

test("the steps to another rig in French name its place first", () => {
  const steps = [rigSteps.rod.swap(" 2", rigSteps.named("long", "305\u00a0mm")), rigSteps.fewer(1, "28\u00a0g")]
  expect(rigSteps.line(rigSteps.sidesOf.both(rigSteps.mounts.lower), ...steps)).toBe(
    "Bas, des deux côtés\u00a0: changer le stabilisateur 2 pour «\u00a0long\u00a0», 305\u00a0mm\u00a0; \u22121 disque de 28\u00a0g",
  )
})

test("in French none is singular", () => {
  expect([0, 1, 2].map(handle.discs)).toEqual(["0 disque", "1 disque", "2 disques"])
})
