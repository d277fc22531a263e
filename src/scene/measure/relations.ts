import { fileFaults } from "../../words/fileFaults"
import { sceneFaults as faults } from "../../words/sceneFaults"
import type { SceneError } from "../errors"
import { chainErrors, contradiction } from "../relations"
import type { Scene } from "../schema"

/**
 * The rules between the fields of readings and tried setups. That a rig's mount is still there is not among them: a
 * mount may be taken away later, and what was read or tried on it is not to stop that.
 */
export function measuredErrors({ measurements = [], log = [] }: Scene): SceneError[] {
  const rigs = [
    ...measurements.map(({ rig }, index) => ({ rig, path: ["measurements", index, "rig"] })),
    ...log.map(({ rig }, index) => ({ rig, path: ["log", index, "rig"] })),
  ]
  return [
    ...measurements.flatMap(({ on, rig }, index) =>
      (on === "rigged") === (rig !== undefined)
        ? []
        : [contradiction(["measurements", index, "rig"], on === "rigged" ? fileFaults.noRig : fileFaults.strayRig(on))],
    ),
    ...rigs.flatMap(({ rig = [], path }) =>
      rig.flatMap(({ mount, chain }, index) => [
        ...(rig.findIndex((other) => other.mount === mount) === index
          ? []
          : [contradiction([...path, index, "mount"], faults.mountTaken(mount))]),
        ...chainErrors(chain, [...path, index, "chain"]),
      ]),
    ),
  ]
}
