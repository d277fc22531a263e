import { hangWeight } from "../../commands/hang"
import { said } from "../../describe/format"
import { hangAnswerText, hangPlaceText, hangSizeText } from "../../describe/hillText"
import type { FlattestHang } from "../../scene/hills"
import { sameButPose } from "../../state/same"
import { useBench, useLive } from "../../state/useBench"
import { useProblem } from "../Problem"
import type { Answered } from "./useHangSearch"

/** The best hang at each place, the flattest of all first, one press each. */
export function HangAnswers({ asked, answer }: Answered) {
  const units = useLive(({ preferences }) => preferences)
  const stale = useLive(({ scene }) => !sameButPose(asked, scene))
  const { bestByPlace, now, complete, progress } = answer
  return (
    <>
      <p className="hills-words" role="status">
        {complete ? `All ${progress.total} tries made.` : `Stopped after ${progress.tried} of ${progress.total} tries.`}{" "}
        The best at each place; the spread as it is now is {said(now.free.flatness, "moment", units)}.
        {stale && " The bow has changed since: search again to try one."}
      </p>
      <ol className="hills-answers">
        {bestByPlace.map((hang) => (
          <Hang key={hang.place.path} hang={hang} asked={asked} stale={stale} />
        ))}
      </ol>
    </>
  )
}

function Hang({ hang, asked, stale }: { hang: FlattestHang; asked: Answered["asked"]; stale: boolean }) {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const { problem, told } = useProblem()
  const name = `${hangPlaceText(hang.place)}, ${hangSizeText(hang.swing, units)}`
  const tryIt = () => {
    told(hangWeight.run(bench, { asked, answer: hang, name }), `${name} hung. Undo takes it back.`)
  }
  return (
    <li className="hills-answer">
      <span>
        <strong>{name}</strong>
        <span className="hills-answer-effect">{hangAnswerText(hang, units)}</span>
      </span>
      <button
        type="button"
        aria-disabled={stale}
        aria-label={`Try: ${name}`}
        onClick={() => {
          if (!stale) tryIt()
        }}
      >
        Try it
      </button>
      {problem}
    </li>
  )
}
