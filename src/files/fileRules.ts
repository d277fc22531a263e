import { type FileRules, standingRules } from "../state/check"

/** How long after a failed fetch a change asks again, ms: a drag makes a change at every frame. */
const PATIENCE_MS = 4000

export interface ArrivingRules {
  readonly rules: FileRules
  /** Whether the rules have come; never rejects. */
  fetch(): Promise<boolean>
}

/**
 * The whole file's rules for the bench, fetched when the page has drawn its first view: the schema's validator is a
 * tenth of what the first view may weigh. Until it is there only numbers can be changed, since the sheets that add and
 * remove parts come later too, and numbers are checked by their commands.
 *
 * A fetch that failed is tried again with the next change; `stayedAway` is called once, when that has failed too.
 */
export function arrivingFileRules(
  stayedAway: () => void = () => undefined,
  load: () => Promise<FileRules> = wholeRules,
): ArrivingRules {
  let now: FileRules = standingRules
  let asked: Promise<boolean> | null = null
  let askAgainAt = Number.POSITIVE_INFINITY
  let failures = 0
  const fetch = (): Promise<boolean> => {
    asked ??= load().then(
      (whole) => {
        now = whole
        return true
      },
      () => {
        asked = null
        askAgainAt = performance.now() + PATIENCE_MS
        failures++
        if (failures === 2) stayedAway()
        return false
      },
    )
    return asked
  }
  return {
    rules(scene) {
      if (asked === null && performance.now() >= askAgainAt) void fetch()
      return now(scene)
    },
    fetch,
  }
}

async function wholeRules(): Promise<FileRules> {
  const [{ validateScene }, { sparingRules }] = await Promise.all([import("../scene/parse"), import("./longLists")])
  return sparingRules((scene) => {
    const valid = validateScene(scene)
    return valid.ok ? [] : valid.errors
  })
}
