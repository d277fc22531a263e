import { expect, test } from "vitest"
import { newScene } from "../../src/scene/templates"
import { sameButPose, sameValue } from "../../src/state/same"

const value = () => ({ name: "x", list: [2, 3, { a: 5 }], nothing: null, yes: true })

test("equal values are the same whichever way their keys are ordered", () => {
  expect(sameValue(value(), value())).toBe(true)
  expect(sameValue({ a: 2, b: [3] }, { b: [3], a: 2 })).toBe(true)
})

test.each<[string, unknown]>([
  ["a number deep inside", { ...value(), list: [2, 3, { a: 7 }] }],
  ["a longer list", { ...value(), list: [2, 3, { a: 5 }, 7] }],
  ["a shorter list", { ...value(), list: [2, 3] }],
  ["a key too many", { ...value(), more: 7 }],
  ["a key too few", { name: "x", list: [2, 3, { a: 5 }], nothing: null }],
  ["another key", { nom: "x", list: [2, 3, { a: 5 }], nothing: null, yes: true }],
  ["an object for null", { ...value(), nothing: {} }],
  ["a list for an object of the same keys", { ...value(), list: { 0: 2, 1: 3, 2: { a: 5 } } }],
  ["text for a number", { ...value(), list: ["2", 3, { a: 5 }] }],
  ["nothing at all", null],
])("%s is a difference, seen from both sides", (_what, other) => {
  expect(sameValue(value(), other)).toBe(false)
  expect(sameValue(other, value())).toBe(false)
})

test("a bow held another way is the same but for its pose, and one with another name is not", () => {
  const scene = newScene()
  const held = { ...scene, pose: { draw: 1, slopeDeg: 20, cantDeg: -3 } }
  expect(sameButPose(scene, structuredClone(held))).toBe(true)
  expect(sameButPose(scene, { ...held, name: "another" })).toBe(false)
})
