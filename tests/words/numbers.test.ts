import { expect, test } from "vitest"
import { localNumber, plainDigits, typedNumber } from "../../src/words/numbers"

test("a point and a comma are both read as the decimal mark, whichever the page's own is", () => {
  for (const mark of [".", ","]) {
    expect(["2.5", "2,5", " -0,25 ", "\u22127.5"].map((text) => plainDigits(text, mark))).toEqual([
      "2.5",
      "2.5",
      "-0.25",
      "-7.5",
    ])
  }
})

test("thousands may be grouped: by spaces anywhere, by commas where the mark is a point, by points before a comma", () => {
  for (const space of [" ", "\u00a0", "\u202f"]) expect(plainDigits(`12${space}500,5`, ",")).toBe("12500.5")
  expect(plainDigits("1,250,300", ".")).toBe("1250300")
  expect(plainDigits("12,500.75", ".")).toBe("12500.75")
  expect(plainDigits("2,650", ",")).toBe("2.650")
  expect(plainDigits("1.250,5", ",")).toBe("1250.5")
})

test("what is no number stays none", () => {
  for (const text of ["3 4", "1,2,3", "two", "1 25"]) expect(Number(plainDigits(text, "."))).toBeNaN()
})

test("numbers are written with a point and a true minus here, and typed with a hyphen", () => {
  expect(localNumber("-0.5")).toBe("\u22120.5")
  expect(typedNumber("-0.5")).toBe("-0.5")
})
