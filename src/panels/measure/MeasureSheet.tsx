import { useDeferredValue, useMemo, useRef } from "react"
import { problemText } from "../../describe/problemText"
import { fitScene, measureResult, namedPoints, nextReadings } from "../../scene/measure"
import { evaluate } from "../../scene/evaluate"
import { useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { Choice } from "../Choice"
import { Problem } from "../Problem"
import { changeDraft, useDraft } from "./drafts"
import "../sections.css"
import "../sheet.css"
import { Finding } from "./Finding"
import "./measure.css"
import { NextReading } from "./NextReading"
import { ReadingList } from "./ReadingList"
import { TakeReading } from "./TakeReading"
import { TriedSetups } from "./TriedSetups"

/** Hands a table over as a file: its name without ending, and its text. */
export type SaveTable = (name: string, text: string) => void

/** The real bow: a bench session that measures it, and the log of the setups that were tried on it. */
export default function MeasureSheet({ onSave }: { onSave: SaveTable }) {
  const { page } = useDraft("sheet")
  return (
    <div className="measure-sheet">
      <Choice
        name={measureSheet.pages.label}
        value={page}
        options={[
          ["session", measureSheet.pages.session],
          ["log", measureSheet.pages.log],
        ]}
        onChoose={(chosen) => {
          changeDraft("sheet", { page: chosen })
          return { ok: true, value: undefined }
        }}
      />
      {page === "session" ? <BenchSession /> : <TriedSetups onSave={onSave} />}
    </div>
  )
}

/** What the readings say, what to read next, how, and the list of them. */
function BenchSession() {
  const list = useRef<HTMLOListElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const scene = useDeferredValue(useLive((state) => state.scene))
  const units = useLive(({ preferences }) => preferences)
  const result = useMemo(() => measureResult(scene), [scene])
  const next = useMemo(() => {
    const fit = fitScene(scene)
    return nextReadings(scene, fit?.ok ? fit.value : null)
  }, [scene])
  const points = useMemo(() => {
    const evaluated = evaluate({ ...scene, pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
    return evaluated.ok ? namedPoints(scene, evaluated.value) : []
  }, [scene])
  return (
    <>
      <p className="measure-note">{measureSheet.intro}</p>
      {result?.ok && <Finding result={result.value} />}
      <Problem text={result?.ok === false ? problemText({ scene, preferences: units }, result.errors) : null} />
      {next !== null && <NextReading next={next} read={result?.ok === true} />}
      <TakeReading points={points} heading={heading} list={list} />
      <ReadingList result={result?.ok ? result.value : null} heading={heading} list={list} />
    </>
  )
}
