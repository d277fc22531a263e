import { errorLine } from "../scene/errors"
import { useBench, useLive } from "../state/useBench"
import { notices } from "../words/notices"
import "./notice.css"

/** More lines than this are counted, not listed. */
const LISTED = 6

/** What was refused, restored or is in the way, in plain words, until it is put away. */
export function NoticeBar() {
  const bench = useBench()
  const notice = useLive((state) => state.notice)
  if (notice === null) return null
  const { tone, text, errors, offer } = notice
  const close = () => bench.setView({ notice: null })
  return (
    <div className={`notice notice-${tone}`} role={tone === "problem" ? "alert" : "status"}>
      <p>
        {tone === "problem" && <strong className="notice-mark">{notices.notDone} </strong>}
        {text}
      </p>
      {errors.length > 0 && (
        <ul>
          {errors.slice(0, LISTED).map((error) => (
            <li key={error.path + error.message}>{errorLine(error)}</li>
          ))}
          {errors.length > LISTED && <li>{notices.more(errors.length - LISTED)}</li>}
        </ul>
      )}
      <p className="notice-actions">
        {offer !== undefined && (
          <button
            type="button"
            onClick={() => {
              offer.run()
              close()
            }}
          >
            {offer.label}
          </button>
        )}
        <button type="button" onClick={close}>
          {notices.close}
        </button>
      </p>
    </div>
  )
}
