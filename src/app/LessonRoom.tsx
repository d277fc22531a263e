import { useCallback, useEffect, useMemo, useState } from "react"
import { LessonList, type ListedLesson } from "../clinic/lessons/LessonList"
import { LessonPlayer } from "../clinic/lessons/LessonPlayer"
import { createPlayer, type Player } from "../clinic/lessons/player"
import { presentation } from "../clinic/lessons/present"
import { readLesson } from "../clinic/lessons/read"
import { fetchShipped } from "../files/shipped"
import { fetchLesson, shippedLessons } from "../files/shippedLessons"
import { success } from "../scene/errors"
import type { Bench, BenchState } from "../state/bench"
import { createFrameStore, soon } from "../state/frame"
import type { LessonAsked } from "../state/lesson"
import { BenchContext, useBench, useLive } from "../state/useBench"
import { files } from "../words/files"
import { BigPicture } from "./BigPicture"
import { NoticeBar } from "./NoticeBar"
import { Spoken } from "./Spoken"
import { Stage } from "./Stage"

/** The lessons, over the bench: it stands below as it was left, and comes back when they are left. */
export default function LessonRoom({ asked }: { asked: LessonAsked }) {
  const bench = useBench()
  const leave = useCallback(() => bench.setView({ lesson: null }), [bench])
  useLeaveForOtherScene(bench, leave)
  const problem = useLive((state) => state.notice?.tone === "problem")
  return (
    <>
      {asked.kind === "list" ? <ShippedList onLeave={leave} /> : <Shown asked={asked} onLeave={leave} />}
      {problem && (
        <div className="bench lesson-notice">
          <NoticeBar />
        </div>
      )}
    </>
  )
}

/** A scene that is opened meanwhile, by being dropped on the page, is what the coach wants to see. */
function useLeaveForOtherScene(bench: Bench, leave: () => void): void {
  useEffect(() => {
    const { scene } = bench.store.getState()
    return bench.store.subscribe((state) => {
      if (state.scene !== scene) leave()
    })
  }, [bench, leave])
}

function ShippedList({ onLeave }: { onLeave(): void }) {
  const bench = useBench()
  const [lessons, setLessons] = useState<readonly ListedLesson[] | "failed" | null>(null)
  useEffect(() => {
    shippedLessons().then(setLessons, () => setLessons("failed"))
  }, [])
  return (
    <LessonList
      lessons={lessons}
      onChoose={({ id }) => bench.setView({ lesson: { kind: "shipped", id } })}
      onShow={() => bench.setView({ lesson: { kind: "bench" } })}
      onLeave={onLeave}
    />
  )
}

type AskedOne = Exclude<LessonAsked, { kind: "list" }>

/** One lesson, once it has been read; one that cannot be shown is explained on the bench. */
function Shown({ asked, onLeave }: { asked: AskedOne; onLeave(): void }) {
  const bench = useBench()
  const [player, setPlayer] = useState<Player | null>(null)
  useEffect(() => {
    let wanted = true
    const state = bench.store.getState()
    setPlayer(null)
    void read(asked, state).then((staged) => {
      if (!wanted) return
      if (staged.ok) return setPlayer(createPlayer(staged.value, state.preferences))
      const name = asked.kind === "shipped" ? asked.id : asked.kind === "file" ? asked.name : state.scene.name
      const text = files.lessonNotOpened(name)
      bench.setView({ lesson: null, notice: { tone: "problem", text, errors: staged.errors } })
    })
    return () => {
      wanted = false
    }
  }, [asked, bench])
  return player === null ? null : (
    <OwnBench
      player={player}
      show={asked.kind === "bench"}
      onLeave={onLeave}
      onList={() => bench.setView({ lesson: { kind: "list" } })}
    />
  )
}

async function read(asked: AskedOne, state: BenchState) {
  if (asked.kind === "bench") return success(presentation(state))
  const text = asked.kind === "shipped" ? await fetchLesson(asked.id) : success(asked.text)
  return text.ok ? readLesson(text.value, fetchShipped) : text
}

interface OwnBenchProps {
  readonly player: Player
  readonly show: boolean
  onLeave(): void
  onList(): void
}

function OwnBench({ player, show, onLeave, onList }: OwnBenchProps) {
  const access = useMemo(
    () => ({ bench: player.bench, frames: createFrameStore(player.bench.store, soon) }),
    [player.bench],
  )
  return (
    <BenchContext value={access}>
      <LessonPlayer
        player={player}
        show={show}
        picture={(big) => (big ? <BigPicture /> : <Stage />)}
        onLeave={onLeave}
        onList={onList}
      />
      <Spoken />
    </BenchContext>
  )
}
