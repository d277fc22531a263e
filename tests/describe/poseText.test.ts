import { expect, test } from "vitest"
import { cantText, drawText, slopeText } from "../../src/describe/poseText"

test("the draw has words at both ends and a share between", () => {
  expect(drawText(0)).toBe("at brace")
  expect(drawText(0.37).replaceAll("\u00a0", " ")).toBe("37 % drawn")
  expect(drawText(1)).toBe("full draw")
})

test("slope and cant say the side instead of a sign", () => {
  expect(slopeText(12)).toBe("12° up")
  expect(slopeText(-7.5)).toBe("7.5° down")
  expect(slopeText(0.02)).toBe("level")
  expect(cantText(5)).toBe("5° right")
  expect(cantText(-3)).toBe("3° left")
  expect(cantText(-0)).toBe("upright")
})
