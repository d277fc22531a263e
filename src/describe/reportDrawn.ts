import { NEWTON_PER_LBF } from "../core/constants"
import type { Bow } from "../scene/schema"
import type { Report } from "../scene/sweeps"
import { DECIMALS, fixed, pairs, roundToSum, signed, table } from "./reportTable"
import { forceWords, placed } from "./reportWords"

const { gram, mm, newton, newtonMetre } = DECIMALS

/** Weight and net lift rounded so that they add up to the lift as it is shown. */
function shownMoments({ noseDownNm, netLiftNm }: { noseDownNm: number; netLiftNm: number }) {
  const [noseDown, net] = roundToSum([noseDownNm, netLiftNm], newtonMetre) as [number, number]
  return { noseDown, net, lift: noseDown + net }
}

/** The balance at full draw, level: the lift of the line of pull against the bow's weight. */
export function fullDrawSection({ fullDraw }: Report): string[] {
  const { lift, noseDown, net } = shownMoments(fullDraw)
  return [
    "Full draw, level",
    ...pairs([
      ["force on the fingers", forceWords(fullDraw.holdForceN)],
      ["line of pull lifts the front by", `${signed(lift, newtonMetre)} N·m`],
      ["weight lowers the front by", `${signed(noseDown, newtonMetre)} N·m`],
      ["net lift", `${signed(net, newtonMetre)} N·m (${netWords(net)})`],
      ["net would be nothing with the balance point", placed(fullDraw.balancedForwardMm, "forward", "back")],
      ["where it is", placed(fullDraw.centreMm[0], "forward", "back")],
      ["to hold it the hand's pressure point moves", placed(fullDraw.gripShiftMm, "up", "down")],
      ["mass with the arrow", `${fixed(fullDraw.massG, gram)} g`],
    ]),
  ]
}

const netWords = (net: number): string => (net === 0 ? "balanced" : `the front ${net > 0 ? "rises" : "sinks"}`)

/** Full draw on slopes, down to up. */
export function slopesSection({ slopes }: Report): string[] {
  return [
    "Full draw on slopes, not canted",
    ...table(
      ["slope", "nose-down N·m", "net lift N·m"],
      slopes.map((row) => {
        const { noseDown, net } = shownMoments(row)
        return [`${signed(row.slopeDeg, 0)}°`.padStart(4), fixed(noseDown, newtonMetre), signed(net, newtonMetre)]
      }),
    ),
  ]
}

/** Every so many points of the draw curve are printed: brace, full draw and seven between. */
const EVERY = 5

export function drawSection({ drawCurve }: Report, kind: Bow["kind"]): string[] {
  const rows = drawCurve.filter((_, index) => index % EVERY === 0)
  return [
    kind === "compound" ? "Draw force (a sketch between its ends, see below)" : "Draw force",
    ...table(
      ["draw mm", "force N", "force lbf"],
      rows.map(({ drawMm, forceN }) => [
        fixed(drawMm, mm).padStart(6),
        fixed(forceN, newton),
        fixed(forceN / NEWTON_PER_LBF, newton),
      ]),
    ),
  ]
}
