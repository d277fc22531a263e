import { type ComponentType, lazy } from "react"
import { download } from "../files/saveFile"
import type { SheetName } from "./Sheet"

interface PageProps {
  /** Offers a table as a file of this name. */
  readonly onSave: (name: string, text: string) => void
}

/** The sheets behind the balance, one line each. */
const pages: Readonly<Record<SheetName, ComponentType<PageProps>>> = {
  Rig: lazy(() => import("../panels/RigSheet")),
  Bow: lazy(() => import("../panels/BowSheet")),
  Sliders: lazy(() => import("../panels/SlidersSheet")),
  Draw: lazy(() => import("../panels/draw/DrawSheet")),
  Hills: lazy(() => import("../panels/hills/HillsSheet")),
  Find: lazy(() => import("./FindPage")),
  Measure: lazy(() => import("../panels/measure/MeasureSheet")),
  Nudge: lazy(() => import("../clinic/nudge/NudgeSheet")),
}

const saveTable = (name: string, text: string) => download(`${name}.csv`, text, "text/csv;charset=utf-8")

export function SheetPage({ name }: { name: SheetName }) {
  const Shown = pages[name]
  return <Shown onSave={saveTable} />
}
