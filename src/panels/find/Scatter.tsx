import { type KeyboardEvent, useMemo, useRef, useState } from "react"
import { said, show, type UnitChoice } from "../../describe/format"
import type { FoundSetup } from "../../scene/find"
import { findSheet } from "../../words/findSheet"
import { frontOf, type Scale, scaleOf } from "./front"

const { picture: words } = findSheet

/** The picture's own measure; it is drawn as wide as the sheet. */
const WIDTH = 360
const HEIGHT = 220
const VIEW = `0 0 ${WIDTH} ${HEIGHT}`
const ROOM = { left: 46, right: 22, top: 10, bottom: 34 }

interface Props {
  readonly setups: readonly FoundSetup[]
  readonly units: UnitChoice
  /** Place in the list of the one that stands out. */
  readonly marked: number | null
  onPoint(index: number | null): void
  onChoose(index: number): void
}

export const turnOf = ({ pitch, yaw, roll }: FoundSetup): number => pitch + yaw + roll

/** All setups found, mass across and turn resistance up. One stop for the keyboard; arrows go from point to point. */
export function Scatter({ setups, units, marked, onPoint, onChoose }: Props) {
  const list = useRef<HTMLDivElement>(null)
  const [at, setAt] = useState(0)
  const weighed = useMemo(() => setups.map((setup) => ({ massG: setup.massG, resistance: turnOf(setup) })), [setups])
  const front = useMemo(() => frontOf(weighed), [weighed])
  const order = useMemo(() => byMass(weighed), [weighed])
  const across = scaleOf(
    weighed.map(({ massG }) => massG),
    4,
    5,
  )
  const up = scaleOf(
    weighed.map(({ resistance }) => resistance),
    4,
    0.002,
  )
  const x = (value: number) => place(across, value, ROOM.left, WIDTH - ROOM.right)
  const y = (value: number) => place(up, value, HEIGHT - ROOM.bottom, ROOM.top)
  const stairs = front.map(
    (index) => `${x(weighed[index]!.massG).toFixed(1)} ${y(weighed[index]!.resistance).toFixed(1)}`,
  )
  // Those on the line are drawn over the others.
  const drawn = [...setups.keys()].sort((a, b) => Number(front.includes(a)) - Number(front.includes(b)) || a - b)
  const here = order[Math.min(at, order.length - 1)] ?? 0

  const onKeyDown = (event: KeyboardEvent) => {
    const by = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key]
    const to = event.key === "Home" ? 0 : event.key === "End" ? order.length - 1 : at + (by ?? 0)
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault()
      onChoose(here)
    }
    if (by === undefined && event.key !== "Home" && event.key !== "End") return
    event.preventDefault()
    const next = Math.min(order.length - 1, Math.max(0, to))
    setAt(next)
    list.current?.querySelector<SVGElement>(`[data-point="${order[next]}"]`)?.focus()
  }

  return (
    <figure className="find-scatter">
      <svg viewBox={VIEW} aria-hidden="true">
        <g className="find-scatter-axes">
          {across.marks.map((mark) => (
            <g key={mark}>
              <path d={`M${x(mark).toFixed(1)} ${ROOM.top}V${HEIGHT - ROOM.bottom}`} />
              <text x={x(mark)} y={HEIGHT - ROOM.bottom + 13} textAnchor="middle">
                {show(mark, "mass", units).text}
              </text>
            </g>
          ))}
          {up.marks.map((mark) => (
            <g key={mark}>
              <path d={`M${ROOM.left} ${y(mark).toFixed(1)}H${WIDTH - ROOM.right}`} />
              <text x={ROOM.left - 5} y={y(mark) + 4} textAnchor="end">
                {show(mark, "inertia", units).text}
              </text>
            </g>
          ))}
          <text x={WIDTH - ROOM.right} y={HEIGHT - 6} textAnchor="end">
            {words.mass(show(0, "mass", units).unit)}
          </text>
          <text x={4} y={HEIGHT - 6}>
            {words.turn(show(0, "inertia", units).unit)}
          </text>
        </g>
        {front.length > 1 && <path className="find-scatter-front" d={`M${stairs.join("L")}`} />}
      </svg>
      <div ref={list} role="listbox" tabIndex={-1} aria-label={words.label} onKeyDown={onKeyDown}>
        <svg viewBox={VIEW} role="presentation">
          {drawn.map((index) => {
            const setup = setups[index]!
            return (
              <g
                key={setup.order}
                role="option"
                aria-selected={index === marked}
                aria-label={pointText(setup, index, front.length > 1 && front.includes(index), units)}
                data-point={index}
                data-front={front.includes(index) || undefined}
                data-marked={index === marked || undefined}
                className="find-point"
                tabIndex={index === here ? 0 : -1}
                onPointerEnter={(event) => event.pointerType === "mouse" && onPoint(index)}
                onPointerLeave={(event) => event.pointerType === "mouse" && onPoint(null)}
                onFocus={() => {
                  setAt(order.indexOf(index))
                  onPoint(index)
                }}
                onBlur={() => onPoint(null)}
                onClick={() => onChoose(index)}
              >
                <circle className="find-point-reach" cx={x(setup.massG)} cy={y(turnOf(setup))} r="11" />
                <circle cx={x(setup.massG)} cy={y(turnOf(setup))} r={index === marked ? 6.5 : 4} />
              </g>
            )
          })}
        </svg>
      </div>
      <figcaption>
        {words.caption}
        {front.length > 1 && ` ${words.line}`}
        {front.length === 1 && setups.length > 1 && ` ${words.oneBest}`}
      </figcaption>
    </figure>
  )
}

const place = ({ from, to }: Scale, value: number, start: number, end: number): number =>
  start + ((value - from) / (to - from)) * (end - start)

const byMass = (weighed: readonly { massG: number; resistance: number }[]): number[] =>
  weighed.map((_, index) => index).sort((a, b) => weighed[a]!.massG - weighed[b]!.massG || a - b)

function pointText(setup: FoundSetup, index: number, front: boolean, units: UnitChoice): string {
  const say = front ? words.pointOnLine : words.point
  return say(index + 1, said(setup.massG, "mass", units), said(turnOf(setup), "inertia", units))
}
