import type { DrawnBalance } from "../core/balance"
import { drawn as words } from "../words/drawn"
import { netLiftWords } from "./balanceText"
import { said, type UnitChoice } from "./format"

/** What stands beside the drawn balance of a bow at full draw. */
export interface DrawnWords {
  /** "lift 2.45 N·m", at the arrow up where the bow's weight would balance it. */
  readonly lift: string
  /** "weight 1.76 N·m", at the arrow down through the balance point. */
  readonly weight: string
  /** "net +0.69 N·m, front rises". */
  readonly net: string
  /**
   * "net +0.69 N·m, front rises: 25.1 mm short of balanced", "… past balanced": the net, and how far the balance point
   * is from where it would have to be.
   */
  readonly gap: string
  /** "hand 3.7 mm higher, drawn 4×": how far its pressure on the grip moves. Empty where nothing holds. */
  readonly hand: string
}

/** How many times its true size the shift in the grip is drawn: it is a few millimetres. */
export const SHIFT_DRAWN = 4
/** A hand cannot move its pressure further than about this on a grip, m (common practice, no source); it is drawn no further. */
export const GRIP_REACH = 0.03

/** `armForward` is the balance point ahead of the grip, m; `sketch` where the force is only sketched. */
export function drawnWords(
  { lift, netLift, balancedForward, gripShift }: DrawnBalance,
  armForward: number,
  sketch: boolean,
  units: UnitChoice,
): DrawnWords {
  const moment = (nm: number) => said(nm, "moment", units)
  const about = (amount: string) => (sketch ? words.about(amount) : amount)
  const sign = netLift > 0 ? "+" : ""
  const net = words.net(about(sign + moment(netLift)), netLiftWords(netLift))
  const ahead = (balancedForward - armForward) * 1e3
  return {
    lift: words.lift(about(moment(lift))),
    weight: words.weight(moment(lift - netLift)),
    net,
    gap: (ahead >= 0 ? words.short : words.past)(net, said(Math.abs(ahead), "length", units)),
    hand: Number.isFinite(gripShift) ? handWords(gripShift, units) : "",
  }
}

/** `shift` of the hand's pressure on the grip, m, positive upwards. */
function handWords(shift: number, units: UnitChoice): string {
  const { higher, lower, enlarged, tooFar } = words.hand
  const how = Math.abs(shift) > GRIP_REACH ? tooFar : enlarged(`${SHIFT_DRAWN}×`)
  return (shift >= 0 ? higher : lower)(said(Math.abs(shift) * 1e3, "length", units), how)
}

/** Whether the force at this draw is only sketched: a compound's, between brace and full draw. */
export const sketchedForce = (kind: "recurve" | "compound", fraction: number): boolean =>
  kind === "compound" && fraction < 1
