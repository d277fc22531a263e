import { afterEach, beforeEach, describe, expect, test, vi } from "vitest"
import { chord, listenForShortcuts } from "../../src/app/shortcuts"
import { setNumber } from "../../src/commands/numbers"
import { fullBench, numberOn } from "../state/benches"

const ROD = "front/rod:lengthMm"

interface Press {
  readonly key: string
  readonly ctrlKey?: boolean
  readonly metaKey?: boolean
  readonly shiftKey?: boolean
  readonly altKey?: boolean
}
const whole = (press: Press) => ({ ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...press })

test.each<[string, Press]>([
  ["z", { key: "z" }],
  ["mod+z", { key: "z", ctrlKey: true }],
  ["mod+z", { key: "z", metaKey: true }],
  ["mod+shift+z", { key: "Z", ctrlKey: true, shiftKey: true }],
  ["mod+alt+shift+arrowleft", { key: "ArrowLeft", metaKey: true, altKey: true, shiftKey: true }],
  ["shift+tab", { key: "Tab", shiftKey: true }],
])("a press is written %s", (written, press) => {
  expect(chord(whole(press))).toBe(written)
})

describe("on the page", () => {
  /** Just enough of a page: what a key press may be aimed at. */
  class Input {
    constructor(readonly type: string) {}
  }
  class TextArea {}
  let page = new EventTarget()

  beforeEach(() => {
    page = new EventTarget()
    vi.stubGlobal("window", page)
    vi.stubGlobal("HTMLInputElement", Input)
    vi.stubGlobal("HTMLTextAreaElement", TextArea)
  })
  afterEach(() => vi.unstubAllGlobals())

  /** A bench with one step to undo; presses say whether the page took the key for itself. */
  function listening() {
    const bench = fullBench()
    setNumber.run(bench, { key: ROD, value: 570 })
    const stop = listenForShortcuts(bench)
    const press = (keys: Press, target: unknown = page) => {
      const event = Object.assign(new Event("keydown", { cancelable: true }), whole(keys))
      Object.defineProperty(event, "target", { value: target })
      page.dispatchEvent(event)
      return event.defaultPrevented
    }
    return { bench, stop, press, rod: () => numberOn(bench, ROD) }
  }
  const UNDO = { key: "z", ctrlKey: true }
  const REDO = { key: "Z", ctrlKey: true, shiftKey: true }

  test("undo and redo go by their keys, redo by either of the usual two", () => {
    const { press, rod } = listening()
    expect(press(UNDO)).toBe(true)
    expect(rod()).toBe(710)
    press(REDO)
    expect(rod()).toBe(570)
    press({ key: "z", metaKey: true })
    press({ key: "y", ctrlKey: true })
    expect(rod()).toBe(570)
  })

  test("other keys are the browser's", () => {
    const { press, rod } = listening()
    for (const key of [{ key: "z" }, { key: "z", ctrlKey: true, altKey: true }, { key: "p", ctrlKey: true }]) {
      expect(press(key)).toBe(false)
    }
    expect(rod()).toBe(570)
  })

  test("while text is typed undo and redo are the text's", () => {
    const { press, rod } = listening()
    for (const target of [new Input("text"), new Input("search"), new TextArea()]) {
      expect(press(UNDO, target)).toBe(false)
      expect(press(REDO, target)).toBe(false)
    }
    expect(rod()).toBe(570)
  })

  test.each(["range", "checkbox", "radio"])("on a %s, which holds no text, they are the bench's", (type) => {
    const { press, rod } = listening()
    expect(press(UNDO, new Input(type))).toBe(true)
    expect(rod()).toBe(710)
  })

  test("with nothing to undo the key still does not reach the browser, and nothing happens", () => {
    const { bench, press } = listening()
    press(UNDO)
    const before = bench.store.getState()
    expect(press(UNDO)).toBe(true)
    expect(bench.store.getState()).toBe(before)
  })

  test("once stopped no key does anything", () => {
    const { press, rod, stop } = listening()
    stop()
    expect(press(UNDO)).toBe(false)
    expect(rod()).toBe(570)
  })
})
