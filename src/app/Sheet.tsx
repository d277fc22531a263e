import {
  type ComponentType,
  type CSSProperties,
  type KeyboardEvent,
  lazy,
  type ReactNode,
  Suspense,
  useState,
} from "react"
import { download } from "../files/saveFile"
import { tabStep } from "./tabStep"
import "./sheetColumn.css"

interface PageProps {
  /** Offers a table as a file of this name. */
  readonly onSave: (name: string, text: string) => void
}

/** The sheets behind the balance, in the order of their tabs: first the setup, then what is asked of it. One line each. */
const pages = {
  Rig: lazy(() => import("../panels/RigSheet")),
  Bow: lazy(() => import("../panels/BowSheet")),
  Sliders: lazy(() => import("../panels/SlidersSheet")),
  Draw: lazy(() => import("../panels/draw/DrawSheet")),
  Hills: lazy(() => import("../panels/hills/HillsSheet")),
  Find: lazy(() => import("./FindPage")),
  Measure: lazy(() => import("../panels/measure/MeasureSheet")),
  Nudge: lazy(() => import("../clinic/nudge/NudgeSheet")),
} satisfies Record<string, ComponentType<PageProps>>

type Name = "Balance" | keyof typeof pages
const names = ["Balance", ...Object.keys(pages)] as Name[]
/** Two full rows, whatever their number: every tab is in sight at every width. */
const columns = Math.ceil(names.length / 2)

const saveTable = (name: string, text: string) => download(`${name}.csv`, text, "text/csv;charset=utf-8")

function Page({ name }: { name: keyof typeof pages }) {
  const Shown: ComponentType<PageProps> = pages[name]
  return (
    <Suspense fallback={<p className="sheet-loading">Loading…</p>}>
      <Shown onSave={saveTable} />
    </Suspense>
  )
}

/** The column beside the picture. The balance page stays in place when another is shown, so its numbers stay live. */
export function Sheet({ balance }: { balance: ReactNode }) {
  const [shown, show] = useState<Name>("Balance")
  const step = (event: KeyboardEvent) => {
    const next = tabStep(event.key, names.indexOf(shown), names.length, columns)
    if (next === null) return
    event.preventDefault()
    show(names[next]!)
    event.currentTarget.querySelectorAll<HTMLElement>("[role=tab]")[next]?.focus()
  }
  return (
    <aside className="sheet" aria-label="Numbers and parts">
      <div
        className="sheet-tabs"
        role="tablist"
        aria-label="Sheet"
        style={{ "--columns": columns } as CSSProperties}
        onKeyDown={step}
      >
        {names.map((name) => (
          <button
            key={name}
            type="button"
            role="tab"
            id={`sheet-tab-${name}`}
            aria-selected={name === shown}
            aria-controls={`sheet-${name}`}
            tabIndex={name === shown ? 0 : -1}
            onClick={() => show(name)}
          >
            {name}
          </button>
        ))}
      </div>
      {names.map((name) => (
        <div
          key={name}
          className="sheet-page"
          role="tabpanel"
          id={`sheet-${name}`}
          aria-labelledby={`sheet-tab-${name}`}
          hidden={name !== shown}
        >
          {name === "Balance" ? balance : name === shown && <Page name={name} />}
        </div>
      ))}
    </aside>
  )
}
