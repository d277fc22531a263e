import { type RefObject, useLayoutEffect, useState } from "react"
import type { Size } from "./frames"

/** An element's inner size, px; null before it is laid out. */
export function useSize(element: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null)
  useLayoutEffect(() => {
    const host = element.current
    if (host === null) return
    const measure = () => {
      const [width, height] = [host.clientWidth, host.clientHeight]
      if (width === 0 || height === 0) return
      setSize((known) => (known?.width === width && known.height === height ? known : { width, height }))
    }
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(host)
    return () => observer.disconnect()
  }, [element])
  return size
}
