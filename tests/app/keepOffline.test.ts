import { expect, test } from "vitest"
import { whenQuiet } from "../../src/app/offline/keepOffline"
import { setNumber } from "../../src/commands/numbers"
import { fullBench } from "../state/benches"

const NOTICE = { tone: "info", text: "something", errors: [] } as const

test("what is not pressing is done at once where nothing is in hand, and only once", () => {
  const bench = fullBench()
  let done = 0
  whenQuiet(bench, () => done++)
  expect(done).toBe(1)
  bench.setView({ notice: NOTICE })
  bench.setView({ notice: null })
  expect(done).toBe(1)
})

test("it waits for the end of a drag and for another notice to be put away", () => {
  const bench = fullBench()
  let done = 0
  bench.begin("a drag")
  whenQuiet(bench, () => done++)
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 573 })
  bench.setView({ notice: NOTICE })
  bench.commit()
  expect(done).toBe(0)
  bench.setView({ notice: null })
  expect(done).toBe(1)
  bench.begin("another")
  bench.cancel()
  expect(done).toBe(1)
})
