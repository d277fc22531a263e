import { findFaults as faults } from "../../words/findFaults"
import { sceneFaults } from "../../words/sceneFaults"
import type { SceneError } from "../errors"
import { unsolvable } from "../limbErrors"
import type { SpaceFault } from "./space"

/** Why there is nothing to search, in words, with its place in the question or the scene. */
export function spaceErrors(fault: SpaceFault): readonly SceneError[] {
  if (fault.why === "limbs") {
    const failed = unsolvable(fault.failure)
    return failed.ok ? [] : failed.errors
  }
  const [path, message] = placed(fault)
  return [{ code: "not-allowed", path, message }]
}

function placed(fault: Exclude<SpaceFault, { why: "limbs" }>): readonly [path: string, message: string] {
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
    case "wrong-way-round": {
      const [from, to] = fault.band
      return [`target.${fault.key}`, sceneFaults.wrongWayRound(String(from), String(to)).join("")]
    }
    case "too-many":
      return ["mostDiscs", faults.tooMany(fault.many.toExponential(1))]
    case "nothing":
      return ["", faults.nothing]
  }
}
