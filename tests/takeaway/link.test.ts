import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import fc from "fast-check"
import { deflateSync } from "fflate"
import { describe, expect, test } from "vitest"
import { parseScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { hasMore, linkTo, linkToLesson, readLessonLink, readLink } from "../../src/takeaway/link/link"
import { lessonOf } from "../../src/takeaway/link/openLink"
import { checksum, pack, unpack } from "../../src/takeaway/link/pack"
import { qrCode } from "../../src/takeaway/link/qr"
import { WORDS_1 } from "../../src/takeaway/link/words1"

const scenes = join(import.meta.dirname, "../../scenes")
const shippedIds = readdirSync(scenes).flatMap((name) => (name.endsWith(".json") ? name.slice(0, -5) : []))
const shippedText = (id: string): string => readFileSync(join(scenes, `${id}.json`), "utf8")

const PAGE = "https://bench.example/at/index.html"
const shipped = (id: string): Scene => {
  const read = parseScene(shippedText(id))
  if (!read.ok) throw new Error(`${id} is not valid`)
  return read.value
}
const read = (link: string): Scene => {
  const scene = readLink(link)
  if (!scene.ok) throw new Error(scene.errors[0]?.message)
  return scene.value
}
const firstError = (link: string): string => {
  const scene = readLink(link)
  return scene.ok ? "it was read" : `${scene.errors[0]?.path} ${scene.errors[0]?.message}`
}

/** As `pack`, of bytes that need not be a text. */
function packedBytes(bytes: Uint8Array, sum = checksum(bytes)): string {
  const packed = deflateSync(bytes, { dictionary: new TextEncoder().encode(WORDS_1) })
  const head = Buffer.alloc(4)
  head.writeUInt32BE(sum)
  return Buffer.concat([head, packed]).toString("base64url")
}

describe("a link", () => {
  test.each(shippedIds)("of %s opens the very same setup, and its code fits a phone's camera", (id) => {
    const scene = shipped(id)
    const link = linkTo(scene, `${PAGE}?scene=other#setup=1.x`, { everything: true })
    expect(link.startsWith(`${PAGE}#setup=1.`)).toBe(true)
    expect(new URL(link).href).toBe(link)
    expect(read(link)).toEqual(scene)
    const lean = linkTo(scene, PAGE, { everything: false })
    expect(lean.length).toBeLessThan(900)
    expect(qrCode(lean)?.size).toBeLessThanOrEqual(97)
  })

  test("takes notes, readings and the log along only where that is wished", () => {
    const [log, measurements] = [
      [{ rig: [], date: "2026-05-17", name: "short bar" }],
      [{ kind: "scale", on: "bow", massG: 2357 }],
    ]
    const text = JSON.stringify({
      ...JSON.parse(shippedText("beginner-one-rod")),
      notes: "stiff ⅝ thread",
      log,
      measurements,
    })
    const parsed = parseScene(text)
    expect(parsed.ok ? [] : parsed.errors).toEqual([])
    const scene = parsed.ok ? parsed.value : shipped("beginner-one-rod")
    expect(read(linkTo(scene, PAGE, { everything: true }))).toEqual(scene)
    const { log: _log, measurements: _readings, ...setup } = scene
    expect(read(linkTo(scene, PAGE, { everything: false }))).toEqual({ ...setup, notes: "" })
    expect(hasMore(scene)).toBe(true)
    expect(hasMore({ ...setup, notes: "" } as Scene)).toBe(false)
  })

  test("of a lesson holds its whole file, and neither kind of link is taken for the other", () => {
    const file = readFileSync(join(scenes, "lessons/4-droop.json"), "utf8")
    const link = linkToLesson(file, `${PAGE}?lesson=other`)
    expect(link.startsWith(`${PAGE}#lesson=1.`)).toBe(true)
    const read = readLessonLink(link)
    expect(read.ok && JSON.parse(read.value)).toEqual(JSON.parse(file))
    expect(firstError(link)).toMatch(/no setup in the link/)
    const other = readLessonLink(linkTo(shipped("beginner-one-rod"), PAGE, { everything: true }))
    expect(other.ok ? "" : other.errors[0]?.message).toMatch(/no lesson in the link/)
    expect(lessonOf(link)).toEqual({ kind: "link", link })
    expect(lessonOf(`${PAGE}?lesson=4-droop`)).toEqual({ kind: "shipped", id: "4-droop" })
    expect(lessonOf(linkTo(shipped("beginner-one-rod"), PAGE, { everything: true }))).toBeNull()
    const cut = readLessonLink(link.slice(0, -9))
    expect(cut.ok ? "" : cut.errors[0]?.message).toMatch(/damaged/)
  })

  test("that was handed out in version 1 opens for ever", () => {
    const old = readFileSync(join(import.meta.dirname, "links/version1.txt"), "utf8").trim()
    expect(read(old)).toEqual(shipped("target-recurve-drooped-bar"))
  })

  test("holds whatever text is put in it", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 3000 }), (text) => {
        expect(unpack(pack(text))).toEqual({ ok: true, value: text })
      }),
      { numRuns: 100, seed: 2357 },
    )
  })

  test("with any letter changed, left out or cut off is refused, never opened as something else", () => {
    const link = linkTo(shipped("short-hunting-rod"), PAGE, { everything: true })
    const from = link.indexOf("#setup=1.") + "#setup=1.".length
    for (let at = from; at < link.length; at += 3) {
      const other = link[at] === "A" ? "B" : "A"
      for (const bad of [
        link.slice(0, at),
        link.slice(0, at) + other + link.slice(at + 1),
        link.slice(0, at) + link.slice(at + 1),
      ]) {
        const scene = readLink(bad)
        // The last letter has bits that stand for nothing.
        if (scene.ok) expect(scene.value).toEqual(shipped("short-hunting-rod"))
        else expect(scene.errors[0]?.message).toMatch(/damaged/)
      }
    }
  })

  test("with something else in it says what is wrong", () => {
    expect(firstError(PAGE)).toMatch(/no setup in the link/)
    expect(firstError(`${PAGE}#setup=`)).toMatch(/no setup/)
    expect(firstError(`${PAGE}#setup=1.`)).toMatch(/damaged/)
    expect(firstError(`${PAGE}#setup=1.not base64!`)).toMatch(/damaged/)
    expect(firstError(`${PAGE}#setup=0.abcd`)).toMatch(/no setup/)
    expect(firstError(`${PAGE}#setup=2.abcd`)).toMatch(/version 2, made by a newer bench/)
    expect(firstError(`${PAGE}#setup=1.${pack("{")}`)).toMatch(/not JSON/)
    expect(firstError(`${PAGE}#setup=1.${pack('{"format":"kit"}')}`)).toMatch(/format/)
    const broken = {
      ...shipped("short-hunting-rod"),
      rig: [{ mount: "front", chain: [{ part: "rod", lengthMm: -3 }] }],
    }
    expect(firstError(`${PAGE}#setup=1.${pack(JSON.stringify(broken))}`)).toMatch(/^rig\[0\]\.chain\[0\]\./)
    expect(firstError(`${PAGE}#setup=1.${packedBytes(Uint8Array.of(0xff, 0xfe, 0x80))}`)).toMatch(/damaged/)
    expect(firstError(`#setup=1.${"A".repeat(500_000)}`)).toMatch(/too long/)
  })

  test("made to swell in memory is given up early", () => {
    const bomb = packedBytes(new Uint8Array(60_000_000), 0)
    expect(bomb.length).toBeLessThan(400_000)
    const before = performance.now()
    expect(firstError(`${PAGE}#setup=1.${bomb}`)).toMatch(/far more than a setup/)
    // Read to its end it takes many times this; two seconds are for a machine with other work.
    expect(performance.now() - before).toBeLessThan(2000)
  })
})

test("a text too long for a printed code has none", () => {
  expect(qrCode("x".repeat(1200))).not.toBeNull()
  expect(qrCode("x".repeat(1400))).toBeNull()
  expect(qrCode("x".repeat(5000))).toBeNull()
})
