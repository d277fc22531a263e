import { type CSSProperties, useEffect, useLayoutEffect, useRef, useState } from "react"
import { createPortal } from "react-dom"
import { DONE } from "../../commands/command"
import { Choice } from "../../panels/Choice"
import { setupCard } from "../../words/setupCard"
import { takeAway } from "../../words/takeAway"
import { CardSheet } from "./CardSheet"
import "./card.css"
import { type Paper, usualPaper } from "./paper"

/**
 * The setup card as it will be printed, over the whole page, which lies still under it. Escape or its button gives the
 * page back. The browser prints this and nothing else while it is shown.
 */
export default function SetupCard({ onClose }: { onClose(): void }) {
  const [paper, setPaper] = useState<Paper>(() => usualPaper(navigator.language))
  const first = useRef<HTMLButtonElement>(null)
  const desk = useRef<HTMLDivElement>(null)
  const scale = useFittingScale(desk)

  useEffect(() => {
    const page = document.getElementById("root")
    if (page === null) return
    page.inert = true
    first.current?.focus()
    return () => {
      page.inert = false
    }
  }, [])
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return
      // Else the dialog that comes back now takes the same key and closes as well.
      event.preventDefault()
      onClose()
    }
    window.addEventListener("keydown", listen)
    return () => window.removeEventListener("keydown", listen)
  }, [onClose])

  return createPortal(
    <div className="card-desk bench" role="dialog" aria-modal="true" aria-label={setupCard.title} ref={desk}>
      <style>{`@page { size: ${paper === "A4" ? "A4" : "letter"} portrait; margin: 0 }`}</style>
      <div className="card-tools">
        <Choice
          name={setupCard.paper}
          value={paper}
          options={[
            ["A4", setupCard.a4],
            ["letter", setupCard.letter],
          ]}
          onChoose={(chosen) => {
            setPaper(chosen)
            return DONE
          }}
        />
        <button type="button" ref={first} onClick={() => window.print()}>
          {setupCard.print}
        </button>
        <button type="button" onClick={onClose}>
          {takeAway.close}
        </button>
      </div>
      <div className="card-table" style={{ "--card-scale": scale } as CSSProperties}>
        <CardSheet paper={paper} />
      </div>
    </div>,
    document.body,
  )
}

/** A sheet of paper and the space around it, CSS px; a CSS mm is 96/25.4 px. */
const SHEET_WIDTH = (216 * 96) / 25.4 + 24

/** How much smaller than paper the sheet is shown, so that a narrow screen has all of its width. */
function useFittingScale(desk: { current: HTMLElement | null }): number {
  const [scale, setScale] = useState(1)
  useLayoutEffect(() => {
    const host = desk.current
    if (host === null) return
    const measure = () => setScale(Math.min(1, host.clientWidth / SHEET_WIDTH))
    const watcher = new ResizeObserver(measure)
    watcher.observe(host)
    measure()
    return () => watcher.disconnect()
  }, [desk])
  return scale
}
