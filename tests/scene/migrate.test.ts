import { readdirSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { CURRENT_VERSION, type Migration, migrate, migrations, withoutGaps } from "../../src/scene/migrate"

const step = (from: number, change: Migration["step"]): Migration => ({
  from,
  what: `planted step ${from}`,
  step: change,
})

const planted = [
  step(1, ({ weightG, ...rest }) => ({ ...rest, massG: weightG })),
  step(2, (document) => ({ ...document, massG: Number(document.massG) * 2 })),
  step(3, (document) => ({ ...document, trail: [...((document.trail as number[]) ?? []), 3] })),
]
const file = (version: number, more: object) => ({ format: "bow-balance-bench", version, ...more })

describe("a file of an older version", () => {
  test("goes through every later step, once and in order", () => {
    expect(migrate(file(1, { weightG: 7 }), planted, 4)).toEqual({
      ok: true,
      value: file(4, { massG: 14, trail: [3] }),
    })
    expect(migrate(file(2, { massG: 5 }), planted, 4)).toEqual({ ok: true, value: file(4, { massG: 10, trail: [3] }) })
    expect(migrate(file(3, { massG: 5 }), planted, 4)).toEqual({ ok: true, value: file(4, { massG: 5, trail: [3] }) })
  })

  test("of the current version goes through none", () => {
    expect(migrate(file(4, { massG: 5 }), planted, 4)).toEqual({ ok: true, value: file(4, { massG: 5 }) })
  })

  test("is not changed itself", () => {
    const document = Object.freeze(file(1, { weightG: 7 }))
    migrate(document, planted, 4)
    expect(document).toEqual(file(1, { weightG: 7 }))
  })

  test("newer than this bench is refused whatever the steps", () => {
    expect(migrate(file(5, {}), planted, 4)).toMatchObject({
      ok: false,
      errors: [{ code: "newer-version", path: "version" }],
    })
  })
})

describe("the list of steps", () => {
  test("leads from version 1 to the current one without a gap", () => {
    expect(withoutGaps(migrations, CURRENT_VERSION)).toBe(true)
  })

  test.each([
    ["whole", planted, 4, true],
    ["one missing in the middle", [planted[0]!, planted[2]!], 4, false],
    ["the first missing", planted.slice(1), 4, false],
    ["the last missing", planted.slice(0, 2), 4, false],
    ["one doubled", [planted[0]!, planted[0]!, planted[2]!], 4, false],
    ["out of order", [planted[1]!, planted[0]!, planted[2]!], 4, false],
    ["one too many", planted, 3, false],
  ])("%s", (_, steps, current, whole) => {
    expect(withoutGaps(steps, current)).toBe(whole)
  })

  test("has a frozen file for every version up to the current one", () => {
    const frozen = readdirSync(join(import.meta.dirname, "old"))
    for (let version = 1; version <= CURRENT_VERSION; version++) expect(frozen).toContain(`v${version}.json`)
  })
})
