import { type ReadoutKey, readouts } from "../describe/readouts"
import { multipleScale, multipleText } from "../describe/turnText"
import type { Figures } from "../scene/figures"
import { figures } from "../state/derived"
import { useLive } from "../state/useBench"
import { figures as words } from "../words/figures"
import { Readout } from "./Readout"

const axes = [
  { of: "inertiaGrip.pitch", index: 2, motion: words.motions.pitch },
  { of: "inertiaGrip.yaw", index: 1, motion: words.motions.yaw },
  { of: "inertiaGrip.roll", index: 0, motion: words.motions.roll },
] as const satisfies readonly { of: ReadoutKey; index: 0 | 1 | 2; motion: string }[]

const multiple = (f: Figures, index: 0 | 1 | 2): number => {
  const bare = f.stripped.inertiaGrip[index][index]
  return bare > 0 ? f.inertiaGrip[index][index] / bare : 0
}

/** Turn resistance as three bars, each against the same bow without its rig. */
export function TurnBars() {
  const end = useLive((state) => multipleScale(Math.max(...axes.map(({ index }) => multiple(figures(state), index)))))
  return (
    <div className="turn-bars">
      {axes.map((axis) => (
        <TurnBar key={axis.of} {...axis} end={end} />
      ))}
      <p className="turn-bars-scale">{words.turnScale(String(end))}</p>
    </div>
  )
}

interface BarProps {
  readonly of: ReadoutKey
  readonly index: 0 | 1 | 2
  readonly motion: string
  readonly end: number
}

function TurnBar({ of, index, motion, end }: BarProps) {
  const times = useLive((state) => multiple(figures(state), index))
  const text = useLive((state) => {
    const f = figures(state)
    return multipleText(f.inertiaGrip[index][index], f.stripped.inertiaGrip[index][index])
  })
  const percent = (value: number) => `${Math.min(100, (100 * value) / end).toFixed(2)}%`
  return (
    <div className="turn-bar">
      <span className="turn-bar-name">
        {readouts[of].label} <span className="turn-bar-motion">{motion}</span>
      </span>
      <Readout of={of} />
      <span className="turn-bar-track" aria-hidden="true">
        <span className="turn-bar-fill" style={{ width: percent(times) }} />
        <span className="turn-bar-bare" style={{ left: percent(1) }} />
      </span>
      <span className="turn-bar-multiple">{text}</span>
    </div>
  )
}
