import { useRef, useState } from "react"
import { lessons } from "../../words/lessons"

/** Copies the link that shows this lesson. Where the browser does not let the page copy, it stands there to be copied by hand. */
export function LessonLink({ make }: { make(): Promise<string> }) {
  const [told, setTold] = useState("")
  const [byHand, setByHand] = useState<string | null>(null)
  const field = useRef<HTMLInputElement>(null)
  const copy = async () => {
    setTold("")
    const link = await make().catch(() => null)
    if (link === null) return setTold(lessons.noLink)
    try {
      await navigator.clipboard.writeText(link)
      setByHand(null)
      setTold(lessons.linkCopied)
    } catch {
      setByHand(link)
      field.current?.focus()
    }
  }
  return (
    <>
      <span className="lesson-told" role="status">
        {told}
      </span>
      {byHand !== null && (
        <input
          className="lesson-link"
          ref={field}
          readOnly
          // Where the keyboard is wanted next: it is there because the button could not do it.
          // biome-ignore lint/a11y/noAutofocus: as said.
          autoFocus
          value={byHand}
          aria-label={lessons.linkByHand}
          onFocus={(event) => event.target.select()}
        />
      )}
      <button type="button" onClick={() => void copy()}>
        {lessons.copyLink}
      </button>
    </>
  )
}
