import { BalanceSheet } from "../panels/BalanceSheet"
import { BigFigures } from "../panels/BigFigures"
import { PoseStrip } from "../panels/PoseStrip"
import { useBench, useLive } from "../state/useBench"
import { page } from "../words/page"
import "./layout.css"
import "./buttons.css"
import "./figuresPlace.css"
import "./small.css"
import { DropTarget } from "./DropTarget"
import { Header } from "./Header"
import { Later, withLater } from "./later"
import { NoticeBar } from "./NoticeBar"
import { Sheet } from "./Sheet"
import { Spoken } from "./Spoken"
import { Stage } from "./Stage"
import { useFocusBack } from "./useFocusBack"

/** The page: the picture first and large, its three figures, the pose, and the sheet beside it. */
export function App() {
  const bench = useBench()
  const lesson = useLive((state) => state.lesson)
  useFocusBack(lesson !== null)
  return (
    <>
      {lesson !== null && <Later>{({ LessonRoom }) => <LessonRoom asked={lesson} />}</Later>}
      <div className="bench" inert={lesson !== null}>
        <Header />
        <main className="bench-main">
          <section className="bench-picture" aria-label={page.bow}>
            <Stage />
            <div className="bench-figures">
              <BigFigures />
            </div>
            <NoticeBar />
          </section>
          <section className="bench-pose" aria-label={page.held}>
            <PoseStrip />
          </section>
          <Sheet
            balance={
              <>
                <Later waiting={<div className="compare-room" />}>
                  {({ Compare }) => <Compare onPick={() => withLater(bench, ({ pickOther }) => pickOther(bench))} />}
                </Later>
                <BalanceSheet />
                <Later>{({ Fixes }) => <Fixes />}</Later>
              </>
            }
          />
        </main>
        <Spoken />
        <DropTarget />
      </div>
    </>
  )
}
