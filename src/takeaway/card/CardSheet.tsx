import { type CSSProperties, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react"
import { cardParts } from "../../describe/cardParts"
import { cardAccessories, cardBow, cardDrawn, cardHeld, cardMeasured, cardTarget } from "../../describe/cardText"
import { shownUnit } from "../../describe/format"
import { cautions } from "../../describe/cautions"
import { evaluate } from "../../scene/evaluate"
import type { MeasureResult } from "../../scene/measure"
import type { Scene } from "../../scene/schema"
import { useLive } from "../../state/useBench"
import { setupCard } from "../../words/setupCard"
import { hasMore, linkTo } from "../link/link"
import { qrCode } from "../link/qr"
import { QrPicture } from "../QrPicture"
import { CardDrawing } from "./CardDrawing"
import { CardFigures } from "./CardFigures"
import { CardParts } from "./CardParts"
import { cutNotes, fits, type Paper, sizeMm } from "./paper"

/** The card's one page. What it holds is made smaller until it fits. */
export function CardSheet({ paper }: { paper: Paper }) {
  const held = useLive((state) => state.evaluation)
  const preferences = useLive((state) => state.preferences)
  const { scene } = held
  // As the bow hangs on the bench, whatever the pose on the page.
  const evaluation = useMemo(() => {
    const level = evaluate({ ...scene, pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
    return level.ok ? level.value : held
  }, [scene, held])
  const measured = useMeasured(scene)
  const spreads = measured?.fit.applied ? measured.spreads : null
  const groups = useMemo(() => cardParts(evaluation, preferences), [evaluation, preferences])
  const whole = linkTo(scene, location.href, { everything: true })
  const leaner = hasMore(scene) && qrCode(whole) === null
  const link = leaner ? linkTo(scene, location.href, { everything: false }) : whole

  const page = useRef<HTMLElement>(null)
  const [step, setStep] = useState(0)
  const fit = fits[step]!
  const size = sizeMm[paper]
  // biome-ignore lint/correctness/useExhaustiveDependencies: another content or paper is tried from the start
  useLayoutEffect(() => setStep(0), [evaluation, preferences, paper, measured])
  useLayoutEffect(() => {
    const sheet = page.current
    if (sheet !== null && sheet.scrollHeight > sheet.clientHeight && step < fits.length - 1) setStep(step + 1)
  })
  const notes = cutNotes(scene.notes, fit.notes)
  const accessories = cardAccessories(scene, preferences)
  const style = {
    "--card-width": `${size.width}mm`,
    "--card-height": `${size.height}mm`,
    "--card-type": `${fit.type}pt`,
    "--card-drawing": `${fit.drawing}mm`,
  } as CSSProperties
  return (
    <article className="card-sheet" ref={page} style={style} data-fit={step}>
      <header className="card-head">
        <div>
          <h1>{scene.name === "" ? setupCard.nameless : scene.name}</h1>
          <p>{cardBow(scene, preferences)}</p>
          {accessories !== "" && <p>{setupCard.accessories(accessories)}</p>}
        </div>
        <figure>
          <QrPicture text={link} />
          <figcaption>{leaner ? setupCard.codeLess : setupCard.code}</figcaption>
        </figure>
      </header>
      <CardDrawing evaluation={evaluation} groups={groups} preferences={preferences} />
      <p className="card-small">{setupCard.drawing}</p>
      <div className="card-columns">
        <div>
          <CardParts groups={groups} unit={shownUnit("length", preferences).unit} />
          <section className="card-words">
            <h2>{setupCard.certainty}</h2>
            <p>{cardMeasured(scene, measured)}</p>
          </section>
          {scene.notes !== "" && (
            <section className="card-words">
              <h2>{setupCard.notes}</h2>
              <p className="card-notes">
                {notes.text} {notes.cut && setupCard.cut}
              </p>
            </section>
          )}
        </div>
        <div>
          <CardFigures title={setupCard.held} lines={cardHeld(evaluation, spreads, preferences)} />
          <CardFigures title={setupCard.drawn} lines={cardDrawn(evaluation, spreads, preferences)} />
          <CardFigures
            title={setupCard.target}
            lines={cardTarget(evaluation, spreads, preferences)}
            without={setupCard.noTarget}
          />
        </div>
      </div>
      <section className="card-words">
        <h2>{setupCard.cautions}</h2>
        <p>{cautions(scene, evaluation.now.parts).join(" ")}</p>
      </section>
    </article>
  )
}

/** What the readings say; null without any, and until what works it out is there. */
function useMeasured(scene: Scene): MeasureResult | null {
  const [result, setResult] = useState<MeasureResult | null>(null)
  useEffect(() => {
    setResult(null)
    if (scene.measurements === undefined) return
    let left = false
    import("../../scene/measure").then(
      ({ measureResult }) => {
        const found = measureResult(scene)
        if (!left && found?.ok) setResult(found.value)
      },
      () => undefined,
    )
    return () => {
      left = true
    }
  }, [scene])
  return result
}
