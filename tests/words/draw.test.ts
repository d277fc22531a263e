import { expect, test } from "vitest"
import { draw } from "../../src/words/fr/draw"

test("in French the front, not the cause, is what rises or is lowered, so that the verb agrees with any cause", () => {
  const { causes, mostly } = draw.why
  expect(mostly.raises.lowers(causes.limbs, "7,21 N·m", "0,31 N·m")).toBe(
    "Surtout les branches\u00a0: l’avant en est relevé de 7,21 N·m\u00a0; tout le reste ensemble l’abaisse de 0,31 N·m.",
  )
  expect(mostly.lowers.raises(causes.arrow, "3 N·m", "2 N·m")).toMatch(/^Surtout la flèche.*abaissé de 3.*relève de 2/)
})
