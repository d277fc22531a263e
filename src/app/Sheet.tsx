import { lazy, type KeyboardEvent, type ReactNode, Suspense, useRef, useState } from "react"
import { download } from "../files/saveFile"

const RigSheet = lazy(() => import("../panels/RigSheet"))
const BowSheet = lazy(() => import("../panels/BowSheet"))
const DrawSheet = lazy(() => import("../panels/draw/DrawSheet"))
const HillsSheet = lazy(() => import("../panels/hills/HillsSheet"))
const SlidersSheet = lazy(() => import("../panels/SlidersSheet"))

const pages = ["Balance", "Rig", "Bow", "Draw", "Hills", "Sliders"] as const
type Page = (typeof pages)[number]

const saveTable = (name: string, text: string) => download(`${name}.csv`, text, "text/csv;charset=utf-8")

/** The column beside the picture. The balance page stays in place when another is shown, so its numbers stay live. */
export function Sheet({ balance }: { balance: ReactNode }) {
  const [page, setPage] = useState<Page>("Balance")
  const tabs = useRef<HTMLDivElement>(null)
  const step = (event: KeyboardEvent) => {
    const by = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0
    if (by === 0) return
    const next = (pages.indexOf(page) + by + pages.length) % pages.length
    setPage(pages[next]!)
    tabs.current?.querySelectorAll<HTMLElement>("[role=tab]")[next]?.focus()
  }
  return (
    <aside className="sheet" aria-label="Numbers and parts">
      <div className="sheet-tabs" role="tablist" aria-label="Sheet" ref={tabs} onKeyDown={step}>
        {pages.map((name) => (
          <button
            key={name}
            type="button"
            role="tab"
            id={`sheet-tab-${name}`}
            aria-selected={name === page}
            aria-controls={`sheet-${name}`}
            tabIndex={name === page ? 0 : -1}
            onClick={() => setPage(name)}
          >
            {name}
          </button>
        ))}
      </div>
      {pages.map((name) => (
        <div
          key={name}
          className="sheet-page"
          role="tabpanel"
          id={`sheet-${name}`}
          aria-labelledby={`sheet-tab-${name}`}
          hidden={name !== page}
        >
          {name === "Balance" && balance}
          {name === page && name !== "Balance" && (
            <Suspense fallback={<p className="sheet-loading">Loading…</p>}>
              {name === "Rig" && <RigSheet />}
              {name === "Bow" && <BowSheet />}
              {name === "Draw" && <DrawSheet onSave={saveTable} />}
              {name === "Hills" && <HillsSheet onSave={saveTable} />}
              {name === "Sliders" && <SlidersSheet />}
            </Suspense>
          )}
        </div>
      ))}
    </aside>
  )
}
