import { findFaults as faults } from "../../words/findFaults"
import { localNumber } from "../../words/numbers"
import { sceneFaults } from "../../words/sceneFaults"
import type { SceneError } from "../errors"
import { targetFields } from "../fields"
import { unsolvable } from "../limbErrors"
import { bare, explained } from "../words"
import type { SpaceFault } from "./space"

/** Why there is nothing to search, in words, with its place in the question or the scene. */
export function spaceErrors(fault: SpaceFault): readonly SceneError[] {
  if (fault.why === "limbs") {
    const failed = unsolvable(fault.failure)
    return failed.ok ? [] : failed.errors
  }
  if (fault.why === "wrong-way-round") {
    const { quantity } = targetFields[fault.key]
    const words = sceneFaults.wrongWayRound(bare(fault.band[0], quantity), bare(fault.band[1], quantity))
    return [explained("not-allowed", `target.${fault.key}`, words)]
  }
  const [path, message] = placed(fault)
  return [{ code: "not-allowed", path, message }]
}

function placed(
  fault: Exclude<SpaceFault, { why: "limbs" | "wrong-way-round" }>,
): readonly [path: string, message: string] {
  switch (fault.why) {
    case "no-mounts":
      return ["mounts", faults.noMounts]
    case "mount-twice":
      return ["mounts", faults.mountTwice]
    case "no-mount":
      return ["mounts", faults.noMount(fault.mount)]
    case "swing-on":
      return ["mounts", faults.swingOn(fault.mount)]
    case "other-mount":
      return ["vbarMount", faults.otherMount(fault.mount)]
    case "no-vbar":
      return ["always.vbar", faults.noVbar]
    case "no-front-rod":
      return ["always.frontRod", faults.noFrontRod]
    case "too-many":
      return ["mostDiscs", faults.tooMany(localNumber(fault.many.toExponential(1)))]
    case "nothing":
      return ["", faults.nothing]
  }
}
