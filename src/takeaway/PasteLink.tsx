import { useId, useState } from "react"
import { errorLine, type Result, type SceneError } from "../scene/errors"
import type { Bench } from "../state/bench"
import { useBench } from "../state/useBench"
import { takeAway } from "../words/takeAway"
import { compareLink, lessonOf, openLink } from "./link/openLink"

/** A link that came by some other way: onto the bench, or beside it. */
export function PasteLink({ onDone }: { onDone(): void }) {
  const bench = useBench()
  const id = useId()
  const [link, setLink] = useState("")
  const [errors, setErrors] = useState<readonly SceneError[]>([])
  const use = (take: (bench: Bench, link: string) => Result<void>) => {
    if (take === openLink && lessonOf(link) !== null) {
      // The dialog gives the focus back first: a lesson that is left gives it to where it found it.
      onDone()
      requestAnimationFrame(() => void openLink(bench, link))
      return
    }
    const taken = take(bench, link)
    if (taken.ok) return onDone()
    // What is wrong stands here, where the link is.
    bench.setView({ notice: null })
    setErrors(taken.errors)
  }
  return (
    <section>
      <form
        onSubmit={(event) => {
          event.preventDefault()
          use(openLink)
        }}
      >
        <h3>
          <label htmlFor={id}>{takeAway.open}</label>
        </h3>
        <p>{takeAway.openNote}</p>
        <input
          id={id}
          value={link}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => {
            setLink(event.target.value)
            setErrors([])
          }}
        />
        <p className="takeaway-actions">
          <button type="submit">{takeAway.openLink}</button>
          <button type="button" onClick={() => use(compareLink)}>
            {takeAway.compareLink}
          </button>
        </p>
        {errors.length > 0 && (
          <p className="takeaway-told" role="alert">
            {takeAway.wrong(...errors.slice(0, 4).map(errorLine))}
          </p>
        )}
      </form>
    </section>
  )
}
