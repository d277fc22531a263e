import { lazy, Suspense, useCallback, useState } from "react"
import { BalanceSheet } from "../panels/BalanceSheet"
import { BigFigures } from "../panels/BigFigures"
import { PoseStrip } from "../panels/PoseStrip"
import { pickOther } from "../files/openFile"
import { useBench, useLive } from "../state/useBench"
import "./layout.css"
import "./buttons.css"
import "./figuresPlace.css"
import "./small.css"
import { DropTarget } from "./DropTarget"
import { Header } from "./Header"
import { NoticeBar } from "./NoticeBar"
import { Sheet } from "./Sheet"
import { Spoken } from "./Spoken"
import { Stage } from "./Stage"
import { useFocusBack } from "./useFocusBack"

const Compare = lazy(() => import("../panels/Compare"))
const Fixes = lazy(() => import("../panels/Fixes"))
const LessonRoom = lazy(() => import("./LessonRoom"))
const Settings = lazy(() => import("../panels/Settings"))

/** The page: the picture first and large, its three figures, the pose, and the sheet beside it. */
export function App() {
  const [settings, setSettings] = useState(false)
  const bench = useBench()
  const openSettings = useCallback(() => setSettings(true), [])
  const lesson = useLive((state) => state.lesson)
  useFocusBack(lesson !== null)
  return (
    <>
      {lesson !== null && (
        <Suspense fallback={null}>
          <LessonRoom asked={lesson} />
        </Suspense>
      )}
      <div className="bench" inert={lesson !== null}>
        <Header onSettings={openSettings} />
        <main className="bench-main">
          <section className="bench-picture" aria-label="The bow">
            <Stage />
            <div className="bench-figures">
              <BigFigures />
            </div>
            <NoticeBar />
          </section>
          <section className="bench-pose" aria-label="How the bow is held">
            <PoseStrip />
          </section>
          <Sheet
            balance={
              <>
                <Suspense fallback={<div className="compare-room" />}>
                  <Compare onPick={() => pickOther(bench)} />
                </Suspense>
                <BalanceSheet />
                <Suspense fallback={null}>
                  <Fixes />
                </Suspense>
              </>
            }
          />
        </main>
        <Spoken />
        <DropTarget />
        {settings && (
          <Suspense fallback={null}>
            <Settings onClose={() => setSettings(false)} />
          </Suspense>
        )}
      </div>
    </>
  )
}
