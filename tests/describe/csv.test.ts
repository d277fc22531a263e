import { expect, test } from "vitest"
import { csvText } from "../../src/describe/csv"

test("a table is written with headings, unrounded numbers and CR LF", () => {
  const text = csvText([
    { heading: "draw mm", values: [2, 3.123456789012] },
    { heading: "force N", values: [-5e-9, 7] },
  ])
  expect(text).toBe("draw mm,force N\r\n2,-5e-9\r\n3.123456789012,7\r\n")
})

test("a short column, a gap and what is not a number leave their cells empty", () => {
  const text = csvText([
    { heading: "a", values: [2, null, Number.NaN] },
    { heading: "b", values: [3] },
  ])
  expect(text).toBe("a,b\r\n2,3\r\n,\r\n,\r\n")
})

test("a heading with a comma or a quote is quoted", () => {
  expect(csvText([{ heading: 'the "free", hanging', values: [5] }])).toBe('"the ""free"", hanging"\r\n5\r\n')
})

test("words stand as they are, quoted where they have a comma, a quote or a line break", () => {
  expect(csvText([{ heading: "a", values: ["plain", "two, three", 'a "b"', "c\nd", ""] }])).toBe(
    'a\r\nplain\r\n"two, three"\r\n"a ""b"""\r\n"c\nd"\r\n\r\n',
  )
})

test("words that a spreadsheet would calculate are kept from it, and numbers below zero are not", () => {
  const values = ["=1+1", "+2", "-3 discs", "@now", " =5", "\t7", "long bar - two discs", "a=b", -5]
  expect(csvText([{ heading: "a", values }])).toBe(
    "a\r\n'=1+1\r\n'+2\r\n'-3 discs\r\n'@now\r\n' =5\r\n'\t7\r\nlong bar - two discs\r\na=b\r\n-5\r\n",
  )
})
