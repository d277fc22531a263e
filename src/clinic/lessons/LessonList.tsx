import { useEffect, useId, useRef } from "react"
import { lessons as words } from "../../words/lessons"
import "./lesson.css"

export interface ListedLesson {
  readonly id: string
  readonly name: string
  readonly about: string
}

interface Props {
  /** "failed" when it could not be fetched, null while it is on its way. */
  readonly lessons: readonly ListedLesson[] | "failed" | null
  onChoose(lesson: ListedLesson): void
  /** Shows the bow on the bench. */
  onShow(): void
  onLeave(): void
}

/** The lessons that come with the bench, over the whole page. */
export function LessonList({ lessons, onChoose, onShow, onLeave }: Props) {
  const id = useId()
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <div
      className="bench lesson"
      role="dialog"
      aria-modal="true"
      aria-labelledby={id}
      onKeyDown={(event) => {
        if (event.key === "Escape") onLeave()
      }}
    >
      <header className="lesson-bar">
        <h2 id={id} ref={heading} tabIndex={-1}>
          {words.title}
        </h2>
        <button type="button" onClick={onLeave}>
          {words.toBench}
        </button>
      </header>
      <div className="lesson-list">
        <p>{words.choose}</p>
        {lessons === "failed" && <p role="alert">{words.listAway}</p>}
        {lessons === null && <p>{words.loading}</p>}
        {lessons !== "failed" && lessons !== null && (
          <ul>
            {lessons.map((lesson) => (
              <li key={lesson.id}>
                <button type="button" onClick={() => onChoose(lesson)}>
                  <strong>{lesson.name}</strong>
                  <span>{lesson.about}</span>
                </button>
              </li>
            ))}
          </ul>
        )}
        <ul>
          <li>
            <button type="button" onClick={onShow}>
              <strong>{words.present}</strong>
              <span>{words.presentAbout}</span>
            </button>
          </li>
        </ul>
        <p className="lesson-own">{words.own}</p>
      </div>
    </div>
  )
}
