import { spoken } from "./language"

/** Why a kit is not searched. Each follows the place in the question, as in "mounts: a mount is named twice". */
export const findFaults = spoken("findFaults", {
  nothing: "nothing can be built: the kit has no piece for something that has to be there",
  /** `many`: a rounded number, as "2.5e+7". */
  tooMany: (many: string) => `${many} possibilities; fewer discs on a stack, coarser angles or fewer mounts are needed`,
  noMounts: "none given; at least one mount to build on is needed",
  mountTwice: "a mount is named twice",
  /** `mount` is the file's key. */
  noMount: (mount: string) => `the bow has no mount "${mount}"`,
  swingOn: (mount: string) => `a swing weight hangs on "${mount}" and the kit has none: leave this mount out`,
  otherMount: (mount: string) => `"${mount}" is not among the mounts that are built anew`,
  noVbar: "a V-bar has to be there, but the kit has none",
  noFrontRod: "a front rod has to be there, but the kit has none",
})
