import { expect, test } from "vitest"
import { kitFiles } from "../../src/words/fr/kitFiles"
import { notices } from "../../src/words/fr/notices"

test("French counts pieces from two on as several, and leaves out others where there are none", () => {
  expect([0, 1, 2, 17].map((count) => kitFiles.inBox("Club", count).split("\u00a0: ")[1])).toEqual([
    "0 pièce",
    "1 pièce",
    "2 pièces",
    "17 pièces",
  ])
  expect(notices.kept("3 mai, 12:17", 0)).toBe("Un travail non enregistré du 3 mai, 12:17 est gardé.")
  expect(notices.kept("3 mai, 12:17", 3)).toBe("Un travail non enregistré du 3 mai, 12:17 est gardé, et 3 de plus.")
})
