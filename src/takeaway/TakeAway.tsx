import { lazy, Suspense, useEffect, useRef, useState } from "react"
import { Files } from "./Files"
import { LinkSection } from "./LinkSection"
import { PasteLink } from "./PasteLink"
import "../panels/fields.css"
import { takeAway } from "../words/takeAway"
import "./takeaway.css"

const SetupCard = lazy(() => import("./card/SetupCard"))

/** Everything that takes the setup off the bench: a link, a printed card, files. Closing gives the focus back. */
export default function TakeAway({ onClose }: { onClose(): void }) {
  const dialog = useRef<HTMLDialogElement>(null)
  const [card, setCard] = useState(false)
  useEffect(() => {
    const before = document.activeElement
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus()
    }
  }, [])
  useEffect(() => {
    if (!card) dialog.current?.showModal()
  }, [card])
  if (card) {
    return (
      <Suspense fallback={null}>
        <SetupCard onClose={() => setCard(false)} />
      </Suspense>
    )
  }
  return (
    <dialog ref={dialog} className="takeaway" aria-labelledby="takeaway-title" onClose={onClose}>
      <div className="takeaway-head">
        <h2 id="takeaway-title">{takeAway.title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {takeAway.close}
        </button>
      </div>
      <LinkSection />
      <section>
        <h3>{takeAway.card}</h3>
        <p>{takeAway.cardNote}</p>
        <button type="button" onClick={() => setCard(true)}>
          {takeAway.showCard}
        </button>
      </section>
      <Files />
      <PasteLink onDone={() => dialog.current?.close()} />
    </dialog>
  )
}
