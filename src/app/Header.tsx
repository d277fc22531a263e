import { type ComponentType, type MouseEvent, useId, useRef, useState } from "react"
import { redo, rename, undo } from "../commands/bench"
import { hasUnsavedChanges } from "../state/bench"
import { useBench, useLive } from "../state/useBench"
import { bar } from "../words/bar"
import "./bar.css"
import { hangBelow } from "./hangBelow"
import { Later, type LaterParts, withLater } from "./later"

/** Name of the setup, the file and the way back. */
export function Header() {
  const bench = useBench()
  const someKept = useLive((state) => state.setAside.length > 0)
  return (
    <header className="bar">
      <h1 className="bar-title">Bow Balance Bench</h1>
      <SetupName />
      <nav className="bar-actions" aria-label={bar.label}>
        <button type="button" onClick={() => withLater(bench, ({ newBench }) => newBench.run(bench))}>
          {bar.fresh}
        </button>
        <Shipped />
        <button type="button" onClick={() => bench.setView({ lesson: { kind: "list" } })} aria-haspopup="dialog">
          {bar.lessons}
        </button>
        <button type="button" onClick={() => withLater(bench, ({ pickFile }) => pickFile(bench))}>
          {bar.open}
        </button>
        {someKept && <Later>{({ KeptMenu }) => <KeptMenu />}</Later>}
        <button type="button" onClick={() => withLater(bench, ({ saveFile }) => saveFile(bench))}>
          {bar.save}
        </button>
        <Opener label={bar.saveAs} dialog={({ SaveAs }) => SaveAs} />
        <Opener label={bar.takeAway} dialog={({ TakeAway }) => TakeAway} />
        <StepButton command={undo} turn="M9 4 4.5 8.5 9 13M5 8.5h9a5.5 5.5 0 0 1 0 11h-4" />
        <StepButton command={redo} turn="M15 4l4.5 4.5L15 13M19 8.5h-9a5.5 5.5 0 0 0 0 11h4" />
        <Opener label={bar.settings} dialog={({ Settings }) => Settings} />
      </nav>
    </header>
  )
}

/** One step back or forward; `turn` is its arrow, in a square of 24. */
function StepButton({ command, turn }: { command: typeof undo; turn: string }) {
  const bench = useBench()
  const possible = useLive((state) => command.enabled?.(state) ?? true)
  const label = useLive(({ history }) => (command === undo ? history.past.at(-1) : history.future[0])?.label ?? "")
  return (
    <button
      type="button"
      // Stays focusable when nothing is left to undo, so that the keyboard is not thrown elsewhere.
      aria-disabled={!possible}
      aria-label={command.label}
      title={label === "" ? command.label : bar.step(command.label, label)}
      className="bar-step"
      onClick={() => possible && command.run(bench)}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d={turn} />
      </svg>
    </button>
  )
}

function SetupName() {
  const bench = useBench()
  const name = useLive((state) => state.scene.name)
  const fileName = useLive((state) => state.fileName)
  const unsaved = useLive(hasUnsavedChanges)
  return (
    <div className="bar-name">
      <input
        key={name}
        aria-label={bar.name}
        defaultValue={name}
        maxLength={200}
        onBlur={(event) => void rename.run(bench, { name: event.target.value.trim() })}
        onKeyDown={(event) => {
          if (event.key === "Enter") event.currentTarget.blur()
          if (event.key !== "Escape") return
          event.currentTarget.value = name
          event.currentTarget.blur()
        }}
      />
      <span className="bar-state">
        {unsaved ? bar.notSaved : fileName === null ? bar.asShipped : bar.savedIn(fileName)}
      </span>
      {/* Where there is no room for that. */}
      {unsaved && (
        <span className="bar-state bar-state-short" aria-hidden="true">
          {bar.unsaved}
        </span>
      )}
    </div>
  )
}

/** The shipped scenes: the menu is here, what is in it comes when it is first opened. */
function Shipped() {
  const [opened, setOpened] = useState(0)
  const menu = useRef<HTMLDivElement>(null)
  const id = useId()
  const open = (event: MouseEvent<HTMLElement>) => {
    hangBelow(event, menu.current)
    setOpened(opened + 1)
  }
  return (
    <>
      <button type="button" popoverTarget={id} onClick={open} className="bar-shipped">
        {bar.examples}
      </button>
      <div id={id} ref={menu} popover="auto" className="bar-menu">
        {opened > 0 && (
          <Later key={opened}>
            {({ ShippedMenu }) => <ShippedMenu onChosen={() => menu.current?.hidePopover()} />}
          </Later>
        )}
      </div>
    </>
  )
}

interface OpenerProps {
  readonly label: string
  readonly dialog: (here: LaterParts) => ComponentType<{ onClose(): void }>
}

/** A button and the dialog that it opens. */
function Opener({ label, dialog }: OpenerProps) {
  const [opened, setOpened] = useState(0)
  return (
    <>
      <button type="button" onClick={() => setOpened(opened + 1)} aria-haspopup="dialog">
        {label}
      </button>
      {opened > 0 && (
        // Anew at each press, as what could not be fetched is asked for again.
        <Later key={opened}>
          {(here) => {
            const Dialog = dialog(here)
            return <Dialog onClose={() => setOpened(0)} />
          }}
        </Later>
      )}
    </>
  )
}
