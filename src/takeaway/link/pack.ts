import { deflateSync, Inflate } from "fflate"
import { failure, type Result, success } from "../../scene/errors"
import { links } from "../../words/links"
import { WORDS_1 } from "./words1"

/** No setup comes near this, bytes of its file; a link made to fill the memory is given up here. */
const LARGEST = 2_000_000
/** Bytes taken in at a time: deflate makes at most a thousand times as much of them. */
const BITE = 1024

/** A text, compressed, in characters that may stand in an address. Four bytes of checksum come first. */
export function pack(text: string): string {
  const bytes = new TextEncoder().encode(text)
  const packed = deflateSync(bytes, { level: 9, dictionary: words() })
  const whole = new Uint8Array(4 + packed.length)
  new DataView(whole.buffer).setUint32(0, checksum(bytes))
  whole.set(packed, 4)
  return toAddress(whole)
}

/** The text that was packed. Fails on anything else, however long, without taking more memory than a setup needs. */
export function unpack(packed: string): Result<string> {
  const whole = fromAddress(packed)
  if (whole === null || whole.length < 5) return DAMAGED
  const pieces: Uint8Array[] = []
  let length = 0
  let ended = false
  try {
    const inflate = new Inflate({ dictionary: words() }, (piece, final) => {
      length += piece.length
      if (length <= LARGEST) pieces.push(piece)
      ended ||= final
    })
    for (let at = 4; at < whole.length && length <= LARGEST; at += BITE) {
      inflate.push(whole.slice(at, at + BITE), at + BITE >= whole.length)
    }
  } catch {
    return DAMAGED
  }
  if (length > LARGEST) return TOO_LARGE
  const bytes = new Uint8Array(length)
  let filled = 0
  for (const piece of pieces) {
    bytes.set(piece, filled)
    filled += piece.length
  }
  if (!ended || checksum(bytes) !== new DataView(whole.buffer).getUint32(0)) return DAMAGED
  try {
    return success(new TextDecoder("utf-8", { fatal: true }).decode(bytes))
  } catch {
    return DAMAGED
  }
}

const DAMAGED = failure({
  code: "syntax",
  path: "",
  message: links.damaged,
})
const TOO_LARGE = failure({ code: "syntax", path: "", message: links.tooLarge })

const words = () => new TextEncoder().encode(WORDS_1)

/** 32-bit FNV-1a (G. Fowler, L. C. Noll, K.-P. Vo; IETF draft-eastlake-fnv): enough to notice a mistyped letter. */
export function checksum(bytes: Uint8Array): number {
  let hash = 0x811c9dc5
  for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0
  return hash
}

/** Base 64 in the letters of an address (RFC 4648, 5), without the equals signs at its end. */
function toAddress(bytes: Uint8Array): string {
  let text = ""
  for (const byte of bytes) text += String.fromCharCode(byte)
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "")
}

function fromAddress(text: string): Uint8Array | null {
  if (!/^[\w-]*$/.test(text)) return null
  try {
    const binary = atob(text.replaceAll("-", "+").replaceAll("_", "/"))
    return Uint8Array.from(binary, (letter) => letter.charCodeAt(0))
  } catch {
    return null
  }
}
