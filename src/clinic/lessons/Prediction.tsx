import { type Ref, useId } from "react"
import { useLive } from "../../state/useBench"
import { lessons } from "../../words/lessons"
import { filled } from "./placeholders"
import type { Foretold } from "./player"
import type { StagedStep } from "./stage"

interface Props {
  readonly staged: StagedStep
  /** Undefined while the question is open. */
  readonly foretold: Foretold | undefined
  onAnswer(choice: number): void
  /** Where the focus goes when the answer comes up. */
  readonly answer: Ref<HTMLDivElement>
}

/** What is going to happen? First the choices, then what the numbers say of them. */
export function Prediction({ staged, foretold, onAnswer, answer }: Props) {
  const { predict } = staged.step
  const id = useId()
  if (predict === undefined) return null
  return (
    <section
      className={foretold === undefined ? "lesson-question" : "lesson-question lesson-answered"}
      aria-labelledby={id}
    >
      <p className="lesson-asked" id={id}>
        {predict.question}
      </p>
      {foretold === undefined ? (
        <ul>
          {predict.choices.map(({ says }, index) => (
            <li key={says}>
              <button type="button" onClick={() => onAnswer(index)}>
                {says}
              </button>
            </li>
          ))}
        </ul>
      ) : (
        <>
          <ul className="lesson-choices">
            {predict.choices.map(({ says }, index) => (
              <Judged key={says} says={says} yours={index === foretold} borneOut={index === staged.right} />
            ))}
          </ul>
          <Feedback staged={staged} foretold={foretold} at={answer} />
        </>
      )}
    </section>
  )
}

function Judged({ says, yours, borneOut }: { says: string; yours: boolean; borneOut: boolean }) {
  const marks = [...(borneOut ? [lessons.borneOut] : []), ...(yours ? [lessons.yours] : [])]
  return (
    <li className={borneOut ? "lesson-borne-out" : yours ? "lesson-yours" : undefined}>
      <span className="lesson-tick" aria-hidden="true">
        {borneOut ? "✓" : yours ? "✕" : ""}
      </span>
      <span>
        {says}
        {marks.length > 0 && <span className="lesson-marks"> {`(${marks.join(", ")})`}</span>}
      </span>
    </li>
  )
}

function Feedback({ staged, foretold, at }: { staged: StagedStep; foretold: Foretold; at: Ref<HTMLDivElement> }) {
  const units = useLive((state) => state.preferences)
  const { step, answered, right } = staged
  if (answered === null || right === null) return null
  const reply = (choice: number) => filled(step.predict?.choices[choice]?.reply ?? "", answered, units)
  return (
    <div className="lesson-reply" ref={at} tabIndex={-1}>
      {foretold !== null && (
        <p>
          <strong>{foretold === right ? lessons.asForetold : lessons.notSo}</strong> {reply(foretold)}
        </p>
      )}
      {foretold !== right && <p>{reply(right)}</p>}
    </div>
  )
}
