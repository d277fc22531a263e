import { hangWeight } from "../../commands/hang"
import { said } from "../../describe/format"
import { hangAnswerText, hangPlaceText, hangSizeText } from "../../describe/hillText"
import type { FlattestHang } from "../../scene/hills"
import { sameButPose } from "../../state/same"
import { useBench, useLive } from "../../state/useBench"
import { hills } from "../../words/hills"
import { useProblem } from "../Problem"
import type { Answered } from "./useHangSearch"

const words = hills.flattest

/** How far a search came: for a region that says it when it ends. */
export function HangSummary({ answer: { now, complete, progress } }: Pick<Answered, "answer">) {
  const units = useLive(({ preferences }) => preferences)
  const { tried, total } = progress
  const spread = said(now.free.flatness, "moment", units)
  return <p className="hills-words">{complete ? words.allTried(total, spread) : words.stopped(tried, total, spread)}</p>
}

/** The best hang at each place, the flattest of all first, one press each. */
export function HangAnswers({ asked, answer }: Answered) {
  const stale = useLive(({ scene }) => !sameButPose(asked, scene))
  return (
    <>
      {stale && <p className="hills-words">{words.changed}</p>}
      <ol className="hills-answers">
        {answer.bestByPlace.map((hang) => (
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
    told(hangWeight.run(bench, { asked, answer: hang, name }), words.hung(name))
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
        aria-label={words.tryThis(name)}
        onClick={() => {
          if (!stale) tryIt()
        }}
      >
        {words.tryIt}
      </button>
      {problem}
    </li>
  )
}
