import type { BenchState } from "./bench"

/** Where a piece of state lives beyond this page: in the scene's file, in this browser, or nowhere. */
export type Home = "file" | "browser" | "nowhere"

/** Every piece of state has its home here; the compiler asks for a line when one is added. */
export const kept: Readonly<Record<keyof BenchState, Home>> = {
  scene: "file",
  evaluation: "nowhere",
  history: "nowhere",
  gesture: "nowhere",
  savedScene: "browser",
  fileName: "browser",
  setAside: "browser",
  preferences: "browser",
  compared: "browser",
  peeked: "nowhere",
  selected: "nowhere",
  hovered: "nowhere",
  camera: "nowhere",
  played: "nowhere",
  touchable: "nowhere",
  lesson: "nowhere",
  notice: "nowhere",
  said: "nowhere",
}
