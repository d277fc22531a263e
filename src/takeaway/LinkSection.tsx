import { useMemo, useRef, useState } from "react"
import { useLive } from "../state/useBench"
import { takeAway } from "../words/takeAway"
import { hasMore, linkTo } from "./link/link"
import { QrPicture } from "./QrPicture"

const isThisComputer = ["localhost", "127.0.0.1", "[::1]"].includes(location.hostname)

/** The link to the setup as it is on the bench: to copy, to send, and as a code. */
export function LinkSection() {
  const scene = useLive((state) => state.scene)
  const [everything, setEverything] = useState(true)
  const [told, setTold] = useState("")
  const field = useRef<HTMLInputElement>(null)
  const link = useMemo(() => linkTo(scene, location.href, { everything }), [scene, everything])

  const copy = async () => {
    field.current?.select()
    try {
      await navigator.clipboard.writeText(link)
      setTold(takeAway.copied)
    } catch {
      setTold(takeAway.notCopied)
    }
  }
  // Turned down by the person, or by a browser that sends no links: nothing has happened then.
  const send = () => void navigator.share({ title: scene.name, url: link }).catch(() => undefined)
  return (
    <section className="takeaway-link">
      <h3>{takeAway.link}</h3>
      <p>
        {takeAway.linkNote}
        {isThisComputer && ` ${takeAway.onlyHere}`}
      </p>
      <QrPicture text={link} />
      <div>
        <input
          ref={field}
          readOnly
          value={link}
          aria-label={takeAway.link}
          onFocus={(event) => event.target.select()}
        />
        {hasMore(scene) && (
          <label className="takeaway-check">
            <input type="checkbox" checked={everything} onChange={(event) => setEverything(event.target.checked)} />
            {takeAway.everything}
          </label>
        )}
        <p className="takeaway-actions">
          <button type="button" onClick={() => void copy()}>
            {takeAway.copy}
          </button>
          {typeof navigator.share === "function" && (
            <button type="button" onClick={send}>
              {takeAway.send}
            </button>
          )}
        </p>
        <p className="takeaway-told" role="status">
          {told}
        </p>
      </div>
    </section>
  )
}
