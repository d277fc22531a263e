import { useSyncExternalStore } from "react"
import { figures } from "../../state/derived"
import { useLive } from "../../state/useBench"
import { type Player, type PlayerState, shownSetups } from "./player"
import type { Spoken } from "./placeholders"

export const usePlayerState = ({ store }: Player): PlayerState => useSyncExternalStore(store.subscribe, store.getState)

/** What the shown step's words speak of, the setup on the lesson's bench as the student has it by now. */
export function useSpoken(player: Player): Spoken {
  const state = usePlayerState(player)
  const scene = useLive((bench) => bench.scene)
  const now = useLive(figures)
  return { ...shownSetups(player.staged, state), now: { scene, figures: now } }
}
