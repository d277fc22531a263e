import { type CSSProperties, type KeyboardEvent, type ReactNode, useState } from "react"
import { page } from "../words/page"
import { Later } from "./later"
import { tabStep } from "./tabStep"
import "./sheetColumn.css"

/** The tabs in their order: the balance, then first the setup, then what is asked of it. */
const names = ["Balance", "Rig", "Bow", "Sliders", "Draw", "Hills", "Find", "Measure", "Nudge"] as const
type Name = (typeof names)[number]
/** Those that are fetched when they are opened. */
export type SheetName = Exclude<Name, "Balance">

/** Two full rows, whatever their number: every tab is in sight at every width. */
const columns = Math.ceil(names.length / 2)

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
    <aside className="sheet" aria-label={page.sheet}>
      <div
        className="sheet-tabs"
        role="tablist"
        aria-label={page.tabList}
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
            {page.tabs[name]}
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
          {name === "Balance"
            ? balance
            : name === shown && (
                <Later waiting={<p className="sheet-loading">{page.loading}</p>}>
                  {({ SheetPage }) => <SheetPage name={name} />}
                </Later>
              )}
        </div>
      ))}
    </aside>
  )
}
