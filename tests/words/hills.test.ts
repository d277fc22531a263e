import { expect, test } from "vitest"
import { hills } from "../../src/words/fr/hills"

test("in French a weight's name stands by itself, so that a label of any gender may be one", () => {
  const { hangs, held } = hills
  const raised = held.both(held.raised("20°"), held.left("5°"))
  expect(hangs.plumb(raised, "Mon pendule", hangs.toArcher("20°"))).toBe(
    "Avant relevé de 20°, dévers de 5° à gauche. Mon pendule\u00a0: pend à 20° vers l’archer dans le repère de l’arc, mais à l’aplomb dans le monde.",
  )
})

test("in French one try and several are told apart, none being one", () => {
  const { stopped, allTried } = hills.flattest
  expect(stopped(0, 731, "0,12 N·m")).toMatch(/^Arrêt après 0 essai sur 731\. .* de 0,12 N·m\.$/)
  expect(stopped(2, 731, "0,12 N·m")).toMatch(/^Arrêt après 2 essais sur/)
  expect(allTried(1, "0,12 N·m")).toMatch(/^1 essai fait\. /)
  expect(allTried(731, "0,12 N·m")).toMatch(/^Les 731 essais sont faits\. /)
})

test("in French the mount and the V-bar of two arms follow in brackets, where they need saying", () => {
  const { bothArms } = hills.flattest
  expect(bothArms("", "")).toBe("les deux bras")
  expect(bothArms("arrière", "V-bar 2")).toBe("les deux bras (arrière, V-bar 2)")
})
