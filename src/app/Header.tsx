import { lazy, Suspense, useId, useRef, useState } from "react"
import { newBench, openScene, redo, rename, undo } from "../commands/bench"
import type { Command } from "../commands/command"
import { pickFile } from "../files/openFile"
import { fileNameFor, saveFile } from "../files/saveFile"
import { fetchShipped, type ShippedScene, shippedScenes } from "../files/shipped"
import { hasUnsavedChanges } from "../state/bench"
import { useBench, useLive } from "../state/useBench"
import { bar } from "../words/bar"
import "./bar.css"

const KeptMenu = lazy(() => import("./KeptMenu"))
const TakeAway = lazy(() => import("../takeaway/TakeAway"))

/** Name of the setup, the file and the way back. */
export function Header({ onSettings }: { onSettings(): void }) {
  const bench = useBench()
  const someKept = useLive((state) => state.setAside.length > 0)
  const run = (command: Command) => () => void command.run(bench)
  return (
    <header className="bar">
      <h1 className="bar-title">Bow Balance Bench</h1>
      <SetupName />
      <nav className="bar-actions" aria-label={bar.label}>
        <button type="button" onClick={run(newBench)}>
          {bar.fresh}
        </button>
        <Shipped />
        <button type="button" onClick={() => bench.setView({ lesson: { kind: "list" } })} aria-haspopup="dialog">
          {bar.lessons}
        </button>
        <button type="button" onClick={() => pickFile(bench)}>
          {bar.open}
        </button>
        {someKept && (
          <Suspense fallback={null}>
            <KeptMenu />
          </Suspense>
        )}
        <button type="button" onClick={() => void saveFile(bench)}>
          {bar.save}
        </button>
        <SaveAs />
        <Away />
        <StepButton command={undo} turn="M9 4 4.5 8.5 9 13M5 8.5h9a5.5 5.5 0 0 1 0 11h-4" />
        <StepButton command={redo} turn="M15 4l4.5 4.5L15 13M19 8.5h-9a5.5 5.5 0 0 0 0 11h4" />
        <button type="button" onClick={onSettings} aria-haspopup="dialog">
          {bar.settings}
        </button>
      </nav>
    </header>
  )
}

function Away() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" onClick={() => setOpen(true)} aria-haspopup="dialog">
        {bar.takeAway}
      </button>
      {open && (
        <Suspense fallback={null}>
          <TakeAway onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}

/** One step back or forward; `turn` is its arrow, in a square of 24. */
function StepButton({ command, turn }: { command: Command; turn: string }) {
  const bench = useBench()
  const possible = useLive((state) => command.enabled?.(state) ?? true)
  const label = useLive(({ history }) => (command === undo ? history.past.at(-1) : history.future[0])?.label ?? "")
  return (
    <button
      type="button"
      // Stays focusable when nothing is left to undo, so that the keyboard is not thrown elsewhere.
      aria-disabled={!possible}
      aria-label={command.label}
      title={label === "" ? command.label : `${command.label}: ${label}`}
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
        aria-label="Name of this setup"
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
        {unsaved ? "not saved to a file yet" : fileName === null ? "as shipped" : `saved in ${fileName}`}
      </span>
      {/* Where there is no room for that. */}
      {unsaved && (
        <span className="bar-state bar-state-short" aria-hidden="true">
          unsaved
        </span>
      )}
    </div>
  )
}

/** The shipped scenes; the list is fetched when it is first asked for. */
function Shipped() {
  const bench = useBench()
  const [scenes, setScenes] = useState<readonly ShippedScene[] | "failed">([])
  const menu = useRef<HTMLDivElement>(null)
  const id = useId()
  const show = () => {
    if (scenes === "failed" || scenes.length === 0) shippedScenes().then(setScenes, () => setScenes("failed"))
  }
  const choose = async (scene: ShippedScene) => {
    menu.current?.hidePopover()
    const fetched = await fetchShipped(scene.id)
    const opened = fetched.ok ? openScene.run(bench, { scene: fetched.value, fileName: null, saved: true }) : fetched
    if (opened.ok) bench.say(`Opened ${scene.name}`)
    else bench.setView({ notice: { tone: "problem", text: `“${scene.name}” was not opened.`, errors: opened.errors } })
  }
  return (
    <>
      <button type="button" popoverTarget={id} onClick={show} className="bar-shipped">
        Examples
      </button>
      <div id={id} ref={menu} popover="auto" className="bar-menu">
        <p>Invented bows to start from. What is on the bench now is one Undo away.</p>
        {scenes === "failed" && <p role="alert">The list could not be fetched. Is the network there?</p>}
        {scenes !== "failed" &&
          scenes.map((scene) => (
            <button key={scene.id} type="button" onClick={() => void choose(scene)}>
              {scene.name}
            </button>
          ))}
      </div>
    </>
  )
}

function SaveAs() {
  const bench = useBench()
  const dialog = useRef<HTMLDialogElement>(null)
  const [name, setName] = useState("")
  const open = () => {
    const { fileName, scene } = bench.store.getState()
    setName(fileName ?? fileNameFor(scene.name))
    dialog.current?.showModal()
  }
  return (
    <>
      <button type="button" onClick={open} aria-haspopup="dialog">
        Save as…
      </button>
      <dialog ref={dialog} className="bar-dialog" aria-label="Save as">
        <form
          method="dialog"
          onSubmit={() => {
            void saveFile(bench, name)
          }}
        >
          <label>
            File name
            <input value={name} onChange={(event) => setName(event.target.value)} maxLength={120} />
          </label>
          <p className="bar-dialog-actions">
            <button type="submit">Save</button>
            <button type="button" onClick={() => dialog.current?.close()}>
              Cancel
            </button>
          </p>
        </form>
      </dialog>
    </>
  )
}
