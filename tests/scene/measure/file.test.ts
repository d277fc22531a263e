/** Readings and tried setups in the file: their defaults, their order, and every way they can be wrong. */
import { describe, expect, test } from "vitest"
import { errorLine } from "../../../src/scene/errors"
import { parseScene, readScene } from "../../../src/scene/parse"
import { serializeScene } from "../../../src/scene/serialize"
import { type Document, fullDocument, rod, smallestDocument } from "../documents"
import { sceneOf } from "../scenes"
import { measuredDocument, readings, rigThen, tried } from "./documents"

const lines = (document: unknown) => {
  const result = readScene(document)
  return result.ok ? [] : result.errors.map(errorLine)
}
const with_ = (index: number, change: Document): Document => ({
  ...fullDocument(),
  measurements: readings().map((one, at) => (at === index ? { ...one, ...change } : one)),
})
const triedWith = (change: Document): Document => ({ ...fullDocument(), log: [{ ...tried()[0], ...change }] })

test("a file without readings or tried setups has none, and none are written into it", () => {
  const scene = sceneOf(smallestDocument())
  expect(scene).not.toHaveProperty("measurements")
  expect(scene).not.toHaveProperty("log")
  expect(serializeScene(scene)).not.toMatch(/measurements|log/)
})

test("readings and tried setups, saved and loaded, are equal, and saved again give the same text", () => {
  const scene = sceneOf(measuredDocument())
  const text = serializeScene(scene)
  expect(parseScene(text)).toEqual({ ok: true, value: scene })
  expect(serializeScene(sceneOf(JSON.parse(text)))).toBe(text)
  expect(Object.keys(JSON.parse(text)).slice(-3)).toEqual(["pose", "measurements", "log"])
})

test("what a reading or a tried setup leaves out gets its documented default", () => {
  const { measurements, log } = sceneOf({
    ...smallestDocument(),
    measurements: [
      { kind: "scale", on: "riser", massG: 1300 },
      { kind: "hang", on: "riser", atMm: [2, 3, 5], slopeDeg: 7 },
      { kind: "swing", on: "riser", atMm: [2, 3, 5], axis: "roll", count: 10, seconds: 13 },
      { kind: "twist", on: "riser", axis: "yaw", count: 10, seconds: 13, lineMm: 1100, radiusMm: 130 },
    ],
    log: [{ rig: [] }],
  })
  const words = { excluded: false, note: "", date: "" }
  expect(measurements).toEqual([
    { kind: "scale", on: "riser", massG: 1300, errorG: 3, ...words },
    { kind: "hang", on: "riser", atMm: [2, 3, 5], pointErrorMm: 2, slopeDeg: 7, errorDeg: 0.5, ...words },
    expect.objectContaining({ pointErrorMm: 2, errorSeconds: 0.15, amplitudeDeg: 5, ...words }),
    expect.objectContaining({ radiusErrorMm: 2, errorSeconds: 0.15, ...words }),
  ])
  expect(log).toEqual([{ date: "", name: "", feel: "", scores: [], note: "", rig: [] }])
})

describe("what is wrong is said with its place", () => {
  test.each<[string, Document, RegExp]>([
    ["a kind that is none", with_(0, { kind: "guess" }), /^measurements\[0\].*"guess".*scale, hang, swing, twist/],
    ["an error of nothing", with_(0, { errorG: 0 }), /^measurements\[0\]\.errorG: 0 given; a number in 0\.01 … 1000 g/],
    ["a scale without a mass", with_(0, { massG: undefined }), /^measurements\[0\]\.massG: is missing/],
    ["an unknown key", with_(1, { angle: 3 }), /^measurements\[1\]\.angle: is not a key/],
    ["a slope past upright", with_(1, { slopeDeg: 91 }), /^measurements\[1\]\.slopeDeg: 91 given/],
    ["half a swing", with_(3, { count: 2.5 }), /^measurements\[3\]\.count: 2\.5 given; a whole number/],
    [
      "a swing about no axis",
      with_(3, { axis: "up" }),
      /^measurements\[3\]\.axis: "up" given; one of pitch, yaw, roll/,
    ],
    ["a time that is none", with_(3, { seconds: -1 }), /^measurements\[3\]\.seconds: -1 given; .* 0\.1 … 3600 s/],
    ["rigged without a rig", with_(2, { rig: undefined }), /^measurements\[2\]\.rig: is missing/],
    ["a rig on the bare bow", with_(1, { rig: rigThen() }), /^measurements\[1\]\.rig: given, but/],
    [
      "a bore wider than its rod",
      with_(2, { rig: [{ mount: "front", chain: [rod({ innerMm: 19 })] }] }),
      /^measurements\[2\]\.rig\[0\]\.chain\[0\]\.innerMm: 19 given/,
    ],
    [
      "two chains on one mount",
      triedWith({ rig: [...rigThen(), ...rigThen()] }),
      /^log\[0\]\.rig\[1\]\.mount: "front" carries a chain already/,
    ],
    ["a feel of six", triedWith({ rating: 6 }), /^log\[0\]\.rating: 6 given; a whole number in 1 … 5/],
    ["a tried setup without its rig", triedWith({ rig: undefined }), /^log\[0\]\.rig: is missing/],
    ["a score in words", triedWith({ scores: ["nine"] }), /^log\[0\]\.scores\[0\]: "nine" given/],
  ])("%s", (_, document, line) => {
    // JSON has no undefined: what is taken away is away.
    const found = lines(JSON.parse(JSON.stringify(document)))
    expect(found).toHaveLength(1)
    expect(found[0]).toMatch(line)
  })

  test("more readings than a file may hold", () => {
    const many = Array.from({ length: 61 }, () => readings()[0])
    expect(lines({ ...fullDocument(), measurements: many })[0]).toMatch(/^measurements: too long; at most 60 entries/)
  })
})

test("a rig that was read or tried does not need its mount any more", () => {
  const scene = { ...measuredDocument(), mounts: {}, rig: [] }
  expect(lines(scene)).toEqual([])
})
