import { useCallback, useEffect, useMemo, useState } from "react"
import { LessonList, type ListedLesson } from "../clinic/lessons/LessonList"
import { LessonPlayer } from "../clinic/lessons/LessonPlayer"
import { createPlayer, type Player } from "../clinic/lessons/player"
import { presentation } from "../clinic/lessons/present"
import { readLesson } from "../clinic/lessons/read"
import { fetchShipped } from "../files/shipped"
import { fetchLesson, shippedLessons } from "../files/shippedLessons"
import { failure, type Result, success } from "../scene/errors"
import type { Bench, BenchState } from "../state/bench"
import { createFrameStore, soon } from "../state/frame"
import type { LessonAsked } from "../state/lesson"
import { BenchContext, useBench, useLive } from "../state/useBench"
import { files } from "../words/files"
import { links } from "../words/links"
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
      const text = asked.kind === "link" ? links.lessonNotOpened : files.lessonNotOpened(nameOf(asked, state))
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
      link={asked.kind === "bench" ? null : () => linkOf(asked)}
      onLeave={onLeave}
      onList={() => bench.setView({ lesson: { kind: "list" } })}
    />
  )
}

function nameOf(asked: Exclude<AskedOne, { kind: "link" }>, { scene }: BenchState): string {
  if (asked.kind === "shipped") return asked.id
  return asked.kind === "file" ? asked.name : scene.name
}

async function read(asked: AskedOne, state: BenchState) {
  if (asked.kind === "bench") return success(presentation(state))
  const text = await fileOf(asked)
  return text.ok ? readLesson(text.value, fetchShipped) : text
}

type AskedFile = Exclude<AskedOne, { kind: "bench" }>

/** The lesson's file. Never rejects. */
async function fileOf(asked: AskedFile): Promise<Result<string>> {
  if (asked.kind === "shipped") return fetchLesson(asked.id)
  if (asked.kind === "file") return success(asked.text)
  try {
    return (await import("../takeaway/link/link")).readLessonLink(asked.link)
  } catch {
    return failure({ code: "not-a-scene", path: "", message: files.linkReaderAway })
  }
}

/** The link that shows this lesson to somebody else: its name where it comes with the bench, else all of it. */
async function linkOf(asked: AskedFile): Promise<string> {
  const page = location.href.replace(/[?#].*$/s, "")
  if (asked.kind === "shipped") return `${page}?lesson=${asked.id}`
  const file = await fileOf(asked)
  if (!file.ok) throw new Error(file.errors[0]?.message)
  return (await import("../takeaway/link/link")).linkToLesson(file.value, page)
}

interface OwnBenchProps {
  readonly player: Player
  readonly show: boolean
  readonly link: (() => Promise<string>) | null
  onLeave(): void
  onList(): void
}

function OwnBench({ player, show, link, onLeave, onList }: OwnBenchProps) {
  const access = useMemo(
    () => ({ bench: player.bench, frames: createFrameStore(player.bench.store, soon) }),
    [player.bench],
  )
  return (
    <BenchContext value={access}>
      <LessonPlayer
        player={player}
        show={show}
        link={link}
        picture={(big) => (big ? <BigPicture /> : <Stage />)}
        onLeave={onLeave}
        onList={onList}
      />
      <Spoken />
    </BenchContext>
  )
}
