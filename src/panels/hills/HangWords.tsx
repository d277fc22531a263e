import { hangSentence, hillSentence } from "../../describe/hillText"
import { partTitle } from "../../describe/partNames"
import { useLive } from "../../state/useBench"
import { hills } from "../../words/hills"

/** What the picture shows of the swing weights, as the bow is held now. */
export function HangWords() {
  const scene = useLive((state) => state.scene)
  const now = useLive(({ evaluation }) => evaluation.now)
  const sentences = now.parts.flatMap(({ hung, path }) =>
    hung === undefined
      ? []
      : [
          hangSentence({
            name: partTitle(scene, path),
            joint: hung.weight.joint,
            stem: hung.rest.direction,
            gravity: now.gravity,
            onStop: hung.rest.onStop,
            slopeDeg: now.pose.slopeDeg,
            cantDeg: now.pose.cantDeg,
          }),
        ],
  )
  return (
    <section>
      <h2 className="sheet-heading">{hills.picture.heading}</h2>
      <p className="hills-words">{hillSentence(now.pose.slopeDeg)}</p>
      {sentences.length === 0 ? <p className="hills-note">{hills.picture.noSwing}</p> : null}
      {sentences.map((sentence) => (
        <p key={sentence} className="hills-words">
          {sentence}
        </p>
      ))}
    </section>
  )
}
