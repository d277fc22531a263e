import { useId, useRef } from "react"
import { bringBack, discardKept } from "../commands/keptWork"
import { timeText } from "../describe/timeText"
import type { KeptWork } from "../state/setAside"
import { useBench, useLive } from "../state/useBench"
import { keptMenu as words } from "../words/keptMenu"
import { hangBelow } from "./hangBelow"
import "./keptMenu.css"

/** Unsaved work that made room for another scene: a way back to each, or a way to be rid of it. */
export function KeptMenu() {
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
    if (done.ok) bench.say(words.isBack(work.scene.name))
    else bench.setView({ notice: { tone: "problem", text: words.notBack, errors: done.errors } })
  }
  const discard = (work: KeptWork) => {
    keepFocus()
    discardKept.run(bench, work)
    bench.say(words.isGone(work.scene.name))
  }
  return (
    <>
      <button type="button" ref={opener} popoverTarget={id} onClick={(event) => hangBelow(event, menu.current)}>
        {words.title}
      </button>
      <div id={id} ref={menu} popover="auto" className="bar-menu kept-menu">
        <p>{words.about}</p>
        <ul>
          {list.map((work) => (
            <li key={`${work.at} ${work.scene.name}`}>
              <span className="kept-name">{work.scene.name}</span>
              <span className="kept-time">{timeText(work.at)}</span>
              <span className="kept-actions">
                <button type="button" aria-label={words.bringBackThis(work.scene.name)} onClick={() => bring(work)}>
                  {words.bringBack}
                </button>
                <button type="button" aria-label={words.discardThis(work.scene.name)} onClick={() => discard(work)}>
                  {words.discard}
                </button>
              </span>
            </li>
          ))}
        </ul>
      </div>
    </>
  )
}
