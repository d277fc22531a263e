import { type ReactNode, useCallback, useEffect, useId, useRef, useState } from "react"
import { useLive } from "../../state/useBench"
import { lessons } from "../../words/lessons"
import { numberOf, within } from "./claims"
import "./lesson.css"
import { LessonLink } from "./LessonLink"
import { filled } from "./placeholders"
import { isOpen, numbersAt, type Player } from "./player"
import { Prediction } from "./Prediction"
import { StepNumbers } from "./StepNumbers"
import { TouchControl } from "./TouchControl"
import { useBigScreen } from "./useBigScreen"
import { useFitting } from "./useFitting"
import { usePlayerState, useSpoken } from "./usePlayer"
import { useStepKeys } from "./useStepKeys"

interface Props {
  readonly player: Player
  /** The drawing of the lesson's bow, at the usual size or for a big screen. */
  picture(big: boolean): ReactNode
  onLeave(): void
  onList(): void
  /** Makes the link that shows this lesson to somebody else; null where there is none. */
  readonly link: (() => Promise<string>) | null
  /** For a bow that is shown and not a lesson: on the big screen from the start. */
  readonly show?: boolean
}

/** A lesson over the whole page: the picture, one idea beside it, and the way on. Stands in the lesson's own bench. */
export function LessonPlayer({ player, picture, link, onLeave, onList, show = false }: Props) {
  const { steps, lesson } = player.staged
  const state = usePlayerState(player)
  const { at, answers } = state
  const open = isOpen(player.staged, state)
  const [big, setBig] = useBigScreen(show)
  const leave = useCallback(() => (big ? setBig(false) : onLeave()), [big, setBig, onLeave])
  useStepKeys(player, leave)
  const title = useId()
  useEffect(() => {
    // From the back of a room the names of the parts are only in the way.
    const { show } = player.bench.store.getState().preferences
    player.bench.setPreferences({ show: { ...show, labels: !big } })
  }, [player, big])
  const last = at === steps.length - 1 && !open
  return (
    <div
      className={big ? "bench lesson lesson-big" : "bench lesson"}
      role="dialog"
      aria-modal="true"
      aria-labelledby={title}
    >
      <header className="lesson-bar">
        <h2 id={title}>{lesson.name}</h2>
        <span className="lesson-count">{lessons.step(String(at + 1), String(steps.length))}</span>
        <button type="button" aria-pressed={big} onClick={() => setBig(!big)}>
          {big ? lessons.usualSize : lessons.big}
        </button>
        {link !== null && !big && <LessonLink make={link} />}
        <button type="button" onClick={onLeave}>
          {show ? lessons.toBench : lessons.leave}
        </button>
      </header>
      <div className="lesson-main">
        <section className="lesson-picture" aria-label={lessons.picture}>
          {picture(big)}
        </section>
        <Idea player={player} foretold={answers.get(at)} big={big} key={at} />
      </div>
      <footer className="lesson-steps">
        <button type="button" aria-disabled={at === 0} onClick={player.back}>
          {lessons.back}
        </button>
        <span className="lesson-keys">{lessons.keys}</span>
        <button type="button" className="lesson-on" onClick={last ? onList : player.forward}>
          {last ? lessons.all : open ? lessons.reveal : lessons.next}
        </button>
      </footer>
    </div>
  )
}

interface IdeaProps {
  readonly player: Player
  readonly foretold: number | null | undefined
  readonly big: boolean
}

/** What a step says, asks and lets do. */
function Idea({ player, foretold, big }: IdeaProps) {
  const { at } = usePlayerState(player)
  const { staged } = player
  const step = staged.steps[at]!
  const units = useLive((state) => state.preferences)
  const spoken = useSpoken(player)
  const idea = useRef<HTMLElement>(null)
  useFitting(idea, big)
  const heading = useRef<HTMLHeadingElement>(null)
  const answer = useRef<HTMLDivElement>(null)
  // What has just come up is read out, and Tab goes on from there.
  const up = foretold === undefined
  useEffect(() => {
    const at = up ? heading.current : answer.current
    at?.focus({ preventScroll: up })
  }, [up])
  // An answered question is looked back at from where it was asked.
  const said = filled(step.step.say, step.answered === null ? spoken : step.asked, units)
  return (
    <section className="lesson-idea" ref={idea}>
      <h3 ref={heading} tabIndex={-1}>
        {step.step.heading}
      </h3>
      <p className="lesson-say">{said}</p>
      <Prediction staged={step} foretold={foretold} onAnswer={player.answer} answer={answer} />
      {step.step.touch && !(step.answered !== null && up) && <TouchControl control={staged.lesson.control} />}
      <StepNumbers of={numbersAt(staged, at)} spoken={spoken} />
      <Goal player={player} />
    </section>
  )
}

/** Says when the number has been brought to where it should be. */
function Goal({ player }: { player: Player }) {
  const { at } = usePlayerState(player)
  const units = useLive((state) => state.preferences)
  const gesturing = useLive((state) => state.gesture !== null)
  const spoken = useSpoken(player)
  const { goal } = player.staged.steps[at]!.step
  const [reply, setReply] = useState("")
  const met = goal !== undefined && within(numberOf(spoken.now.figures, goal.of) ?? Number.NaN, goal.between)
  const now = met ? filled(goal.reply, spoken, units) : ""
  // While the slider is dragged past the goal nothing is said; what it is let go at counts.
  if (!gesturing && reply !== now) setReply(now)
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (reply !== "") said.current?.scrollIntoView({ block: "nearest" })
  }, [reply])
  if (goal === undefined) return null
  return (
    <p className="lesson-goal" role="status" ref={said}>
      {reply !== "" && (
        <>
          <strong>{lessons.done}</strong> {reply}
        </>
      )}
    </p>
  )
}
