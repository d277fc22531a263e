/**
 * What the first view does without, in one script that is fetched beside the 3D picture: what a press or a key asks for,
 * and where everything bigger is fetched from. Reached only through `later`.
 */
import { lazy } from "react"

export { bringBack } from "../commands/keptWork"
export { newBench } from "../commands/setup"
export { openFile, pickFile, pickOther } from "../files/openFile"
export { saveFile } from "../files/saveFile"
export { fetchShipped } from "../files/shipped"
export { followLanguage } from "./followLanguage"
export { followLinks } from "./followLinks"
export { KeptMenu } from "./KeptMenu"
export { fetchLinked } from "./linked"
export { SaveAs } from "./SaveAs"
export { SheetPage } from "./SheetPage"
export { ShippedMenu } from "./ShippedMenu"
export { listenForShortcuts } from "./shortcuts"
export { Stopped } from "./Stopped"

export const Compare = lazy(() => import("../panels/Compare"))
export const Fixes = lazy(() => import("../panels/Fixes"))
export const LessonRoom = lazy(() => import("./LessonRoom"))
export const Settings = lazy(() => import("../panels/Settings"))
export const TakeAway = lazy(() => import("../takeaway/TakeAway"))

/** Has the browser keep the bench for days without a network. */
export const keepOffline = async (...to: Parameters<typeof import("./offline/keepOffline").keepOffline>) =>
  (await import("./offline/keepOffline")).keepOffline(...to)
