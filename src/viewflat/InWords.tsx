import { pictureText } from "../describe/pictureText"
import { spreads } from "../state/spreads"
import { useLive, usePreferences } from "../state/useBench"

/** What the drawing shows, for those who do not see it: a piece of its own, as the first view is complete without. */
export default function InWords() {
  const evaluation = useLive((state) => state.evaluation)
  const preferences = usePreferences()
  const { scene } = evaluation
  return pictureText(scene, evaluation, preferences, spreads({ scene, evaluation })?.["centreMm.forward"])
}
