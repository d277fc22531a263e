import { generate } from "lean-qr"

/** A square of dark and light modules. */
export interface QrCode {
  /** Modules on a side, without the quiet zone around them. */
  readonly size: number
  /** The dark modules as an SVG path, one unit a module. */
  readonly path: string
}

/** The light border that readers need, modules (ISO/IEC 18004, 6.3.8). */
export const QUIET = 4

/** Printed small, a denser code than version 25 is beyond the camera of a plain phone (common practice, no source). */
const MOST_MODULES = 17 + 4 * 25

/** The code of a text; null for one too long for a code that a phone can read off paper. */
export function qrCode(text: string): QrCode | null {
  try {
    const code = generate(text)
    if (code.size > MOST_MODULES) return null
    let path = ""
    for (let y = 0; y < code.size; y++) {
      for (let x = 0; x < code.size; x++) {
        if (!code.get(x, y)) continue
        const from = x
        while (code.get(x + 1, y)) x++
        path += `M${from} ${y}h${x + 1 - from}v1h-${x + 1 - from}z`
      }
    }
    return { size: code.size, path }
  } catch {
    // The library's way of saying that no code is large enough.
    return null
  }
}
