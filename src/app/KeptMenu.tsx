import { useId, useRef } from "react"
import { bringBack, discardKept } from "../commands/keptWork"
import { timeText } from "../describe/timeText"
import type { KeptWork } from "../state/setAside"
import { useBench, useLive } from "../state/useBench"
import "./keptMenu.css"

/** Unsaved work that made room for another scene: a way back to each, or a way to be rid of it. */
export default function KeptMenu() {
  const bench = useBench()
  const list = useLive((state) => state.setAside)
  const opener = useRef<HTMLButtonElement>(null)
  const menu = useRef<HTMLDivElement>(null)
  const id = useId()
  /** With its last entry the menu goes: the focus must not go with it. */
  const keepFocus = () => {
    const before = opener.current?.previousElementSibling
    const next = list.length > 1 ? opener.current : before
    if (next instanceof HTMLElement) next.focus()
  }
  const bring = (work: KeptWork) => {
    menu.current?.hidePopover()
    keepFocus()
    const done = bringBack.run(bench, { work, now: Date.now() })
    if (done.ok) bench.say(`${work.scene.name} is back`)
    else bench.setView({ notice: { tone: "problem", text: "That work was not brought back.", errors: done.errors } })
  }
  const discard = (work: KeptWork) => {
    keepFocus()
    discardKept.run(bench, work)
    bench.say(`${work.scene.name} discarded; Undo brings it back`)
  }
  return (
    <>
      <button type="button" ref={opener} popoverTarget={id}>
        Kept work
      </button>
      <div id={id} ref={menu} popover="auto" className="bar-menu kept-menu">
        <p>
          Unsaved work that made room for another bow. It stays in this browser until you bring it back or discard it.
        </p>
        <ul>
          {list.map((work) => (
            <li key={`${work.at} ${work.scene.name}`}>
              <span className="kept-name">{work.scene.name}</span>
              <span className="kept-time">{timeText(work.at)}</span>
              <span className="kept-actions">
                <button type="button" aria-label={`Bring back ${work.scene.name}`} onClick={() => bring(work)}>
                  Bring it back
                </button>
                <button type="button" aria-label={`Discard ${work.scene.name}`} onClick={() => discard(work)}>
                  Discard
                </button>
              </span>
            </li>
          ))}
        </ul>
      </div>
    </>
  )
}
