import fc from "fast-check"
import { expect, test } from "vitest"
import { jsonFault } from "../../src/scene/jsonFault"
import { fullDocument } from "./documents"

const parses = (text: string): boolean => {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

test.each([
  ['{\n  "a": 2,\n  "b": }\n', 3, 8, "a value is needed"],
  ['{\n "a": [2,,3]}', 2, 10, "a value is needed"],
  ['{\n "a": [2,\n 3]\n "b": 5}', 4, 2, '"," or "}" is needed'],
  ['{"a": 2,}', 1, 9, "a key in double quotes is needed"],
  ["{'a': 2}", 1, 2, 'a key in double quotes or "}" is needed'],
  ['{"a" 2}', 1, 6, '":" is needed'],
  ["[2 3]", 1, 4, '"," or "]" is needed'],
  ["[", 1, 2, 'the file ends here; a value or "]" is needed'],
  ['{\n "a": [2,3],\n "b": ', 3, 7, "the file ends here; a value is needed"],
  ["{} 5", 1, 4, "nothing more may follow"],
  ["[2}", 1, 3, '"," or "]" is needed'],
  ["[02]", 1, 3, '"," or "]" is needed'],
  ['["x\ny"]', 1, 4, "no line break or other control character may stand in a text"],
  ['[2,\n"xy]', 2, 1, "the text that begins here has no closing quote"],
  ["// note\n{}", 1, 1, "a value is needed"],
  ["", 1, 1, "the file ends here; a value is needed"],
])("%j goes wrong at line %i, column %i: %s", (text, line, column, needed) => {
  expect(jsonFault(text)).toEqual({ line, column, needed })
})

test("a wrong escape is placed at its backslash", () => {
  expect(jsonFault('["a\\x"]')).toMatchObject({ line: 1, column: 4 })
  expect(jsonFault('["a\\u12g4"]')).toMatchObject({ line: 1, column: 4 })
})

test("nesting of any depth is followed", () => {
  const deep = 200_000
  expect(jsonFault("[".repeat(deep))).toMatchObject({ line: 1, column: deep + 1 })
  expect(jsonFault(`${"[".repeat(deep)}${"]".repeat(deep)}`)).toBeNull()
})

test("it finds a fault exactly where the engine refuses a text", () => {
  const whole = JSON.stringify(fullDocument(), null, 1)
  const damaged = fc
    .record({
      at: fc.nat(whole.length),
      cut: fc.nat(3),
      put: fc.stringMatching(/^[{}[\]",:\\ 0-9eE.u\-\n\ttruefalsn]{0,3}$/),
    })
    .map(({ at, cut, put }) => whole.slice(0, at) + put + whole.slice(at + cut))
  const small = fc.stringMatching(/^[{}[\]",:\\ 0-9eE.u\-+\n]{0,12}$/)
  fc.assert(
    fc.property(fc.oneof(damaged, small, fc.json(), fc.string()), (text) => {
      expect(jsonFault(text) === null).toBe(parses(text))
    }),
    { seed: 7301, numRuns: 3000 },
  )
})
