import { expect, test } from "vitest"
import { findSheet } from "../../src/words/fr/findSheet"
import { search } from "../../src/words/fr/search"

const plain = (text: string) => text.replaceAll("\u00a0", " ")

test("in French none and one are counted in the singular", () => {
  expect([0, 1, 2].map((pieces) => plain(findSheet.box.holds("Club", pieces)))).toEqual([
    "« Club » : 0 pièce.",
    "« Club » : 1 pièce.",
    "« Club » : 2 pièces.",
  ])
  expect([0, 1, 3].map(findSheet.search.found)).toEqual([
    "0 réglage trouvé.",
    "1 réglage trouvé.",
    "3 réglages trouvés.",
  ])
})

test("in French what an old list belongs to keeps its article, alone and with others", () => {
  const { bow, kit, question, one } = search.earlier
  expect(one(kit)).toBe("la boîte d’avant")
  expect(one(search.and([bow, kit].join(", "), question))).toBe("l’arc, la boîte et la question d’avant")
})
