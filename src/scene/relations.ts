import { gyrationPossible } from "../core/solids"
import { pathText, type PathStep, type SceneError } from "./errors"
import { targetFields } from "./fields"
import type { Element, Scene } from "./schema"
import { amount, bare, explained, type Words } from "./words"

/** The rules that hold between fields, once each field is in its own range. All that are broken are returned. */
export function relationErrors(scene: Scene): SceneError[] {
  return [...bowErrors(scene), ...rigErrors(scene), ...targetErrors(scene)]
}

export const contradiction = (path: readonly PathStep[], ...words: Words): SceneError =>
  explained("contradiction", pathText(path), words)

function bowErrors({ bow }: Scene): SceneError[] {
  const errors: SceneError[] = []
  if (!gyrationPossible(bow.riser.gyrationMm)) errors.push(gyrationError(["bow", "riser", "gyrationMm"]))
  if (bow.kind === "compound" && !gyrationPossible(bow.limbs.gyrationMm)) {
    errors.push(gyrationError(["bow", "limbs", "gyrationMm"]))
  }
  if (bow.drawLengthMm <= bow.braceHeightMm) {
    errors.push(
      contradiction(
        ["bow", "drawLengthMm"],
        bare(bow.drawLengthMm, "length"),
        " given; more than the brace height, ",
        amount(bow.braceHeightMm, "length"),
        ", is needed",
      ),
    )
  }
  return errors
}

const gyrationError = (path: readonly PathStep[]) =>
  contradiction(path, "no body has these radii of gyration: none squared may exceed the other two squared together")

function rigErrors(scene: Scene): SceneError[] {
  const errors: SceneError[] = []
  const seen = new Set<string>()
  scene.rig.forEach(({ mount, chain }, index) => {
    const path = ["rig", index, "mount"]
    if (scene.mounts[mount] === undefined) {
      errors.push(contradiction(path, `"${mount}" given, but the bow has no such mount; add mounts.${mount}`))
    }
    if (seen.has(mount)) errors.push(contradiction(path, `"${mount}" carries a chain already; one chain a mount`))
    seen.add(mount)
    errors.push(...chainErrors(chain, ["rig", index, "chain"]))
  })
  return errors
}

/** What is broken in the parts of a chain, each by its place under `path`. */
export function chainErrors(chain: readonly Element[], path: readonly PathStep[]): SceneError[] {
  return chain.flatMap((element, index) => elementErrors(element, [...path, index]))
}

function elementErrors(element: Element, path: readonly PathStep[]): SceneError[] {
  switch (element.part) {
    case "extender":
    case "rod":
    case "damper":
      if (element.innerMm < element.outerMm) return []
      return [
        contradiction(
          [...path, "innerMm"],
          bare(element.innerMm, "length"),
          " given; less than the outer diameter, ",
          amount(element.outerMm, "length"),
          ", is needed",
        ),
      ]
    case "vbar":
      return (["left", "right"] as const).flatMap((side) =>
        chainErrors(element[side]?.chain ?? [], [...path, side, "chain"]),
      )
    case "weights":
    case "swing":
      return []
  }
}

function targetErrors({ target }: Scene): SceneError[] {
  return (["forwardMm", "upMm", "sideMm", "netLiftNm"] as const).flatMap((key) => {
    const range = target[key]
    if (range === undefined || range[0] <= range[1]) return []
    const [from, to] = range.map((value) => bare(value, targetFields[key].quantity))
    return [contradiction(["target", key], from!, " to ", to!, " given; the smaller number comes first")]
  })
}
