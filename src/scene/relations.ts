import { gyrationPossible } from "../core/solids"
import { sceneFaults as faults } from "../words/sceneFaults"
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
        ...faults.drawTooShort(bare(bow.drawLengthMm, "length"), amount(bow.braceHeightMm, "length")),
      ),
    )
  }
  return errors
}

const gyrationError = (path: readonly PathStep[]) => contradiction(path, faults.noBody)

function rigErrors(scene: Scene): SceneError[] {
  const errors: SceneError[] = []
  const seen = new Set<string>()
  scene.rig.forEach(({ mount, chain }, index) => {
    const path = ["rig", index, "mount"]
    if (scene.mounts[mount] === undefined) {
      errors.push(contradiction(path, faults.noMount(mount)))
    }
    if (seen.has(mount)) errors.push(contradiction(path, faults.mountTaken(mount)))
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
          ...faults.boreTooWide(bare(element.innerMm, "length"), amount(element.outerMm, "length")),
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
    const { quantity } = targetFields[key]
    return [contradiction(["target", key], ...faults.wrongWayRound(bare(range[0], quantity), bare(range[1], quantity)))]
  })
}
