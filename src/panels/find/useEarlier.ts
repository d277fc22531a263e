import { useMemo } from "react"
import { changedSince } from "../../commands/find"
import { earlierText } from "../../describe/findText"
import type { Asked, FindQuestion } from "../../scene/find"
import type { KitBox } from "../../state/kitBox"
import { useLive } from "../../state/useBench"
import { useStore } from "./useStore"

/** What the last search's answers belong to, in words, where that is no longer what would be searched now; else null. */
export function useEarlier(box: KitBox, asked: Asked | null, question: FindQuestion): string | null {
  const kit = useStore(box.store, (state) => state.kit)
  const scene = useLive((state) => state.scene)
  return useMemo(
    () => (asked === null ? null : earlierText(changedSince(asked, { scene, kit, question }))),
    [asked, scene, kit, question],
  )
}
