import { addAfterEffect, invalidate } from "@react-three/fiber"
import { takeAway } from "../../words/takeAway"

/** Space around the words under the picture, and their size, CSS px. */
const FOOT = { height: 40, size: 15, left: 14 }

/**
 * The picture of the bow as it is seen, with its words, and `caption` under it. Rejects where the browser gives no
 * picture away or draws none.
 */
export async function picturePng(caption: string): Promise<Blob> {
  const stage = document.querySelector<HTMLElement>(".stage")
  if (stage === null) throw new Error(takeAway.noStage)
  const { width, height } = stage.getBoundingClientRect()
  const fine = Math.max(2, window.devicePixelRatio || 1)
  const canvas = document.createElement("canvas")
  canvas.width = Math.round(width * fine)
  canvas.height = Math.round((height + FOOT.height) * fine)
  const pen = canvas.getContext("2d")
  if (pen === null) throw new Error(takeAway.noPen)
  pen.scale(fine, fine)
  const styles = getComputedStyle(document.documentElement)
  pen.fillStyle = styles.getPropertyValue("--ground")
  pen.fillRect(0, 0, width, height + FOOT.height)
  const solid = stage.querySelector<HTMLCanvasElement>(".stage-solid:not(.stage-waiting) canvas")
  if (solid !== null) await layFrame(pen, solid, width, height)
  else await layDrawing(pen, stage.querySelector<SVGSVGElement>(".flat-view svg"), width, height)
  if (solid !== null) layWords(pen, stage)
  pen.fillStyle = styles.getPropertyValue("--ink")
  pen.font = `600 ${FOOT.size}px ${styles.fontFamily}`
  pen.textAlign = "left"
  pen.textBaseline = "middle"
  pen.fillText(caption, FOOT.left, height + FOOT.height / 2, width - 2 * FOOT.left)
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob === null ? reject(new Error(takeAway.noPicture)) : resolve(blob))),
  )
}

/** A drawn frame is gone once it is on the screen: it is taken right after it has been drawn. */
function layFrame(pen: CanvasRenderingContext2D, solid: HTMLCanvasElement, width: number, height: number) {
  return new Promise<void>((resolve) => {
    const stop = addAfterEffect(() => {
      stop()
      pen.drawImage(solid, 0, 0, width, height)
      resolve()
    })
    invalidate()
  })
}

/** The labels of the solid picture are page elements over it. */
function layWords(pen: CanvasRenderingContext2D, stage: HTMLElement): void {
  const origin = stage.getBoundingClientRect()
  for (const word of stage.querySelectorAll<HTMLElement>(".view3d-labels *")) {
    const text = word.children.length === 0 ? (word.textContent ?? "") : ""
    const { left, top, width, height } = word.getBoundingClientRect()
    const { visibility, color, backgroundColor, font } = getComputedStyle(word)
    if (text === "" || width === 0 || visibility === "hidden") continue
    pen.fillStyle = backgroundColor
    pen.fillRect(left - origin.left, top - origin.top, width, height)
    pen.fillStyle = color
    pen.font = font
    pen.textAlign = "center"
    pen.textBaseline = "middle"
    pen.fillText(text, left - origin.left + width / 2, top - origin.top + height / 2)
  }
}

/** What of the page's styles a drawing needs to look the same outside of it. */
const LOOKS = [
  "fill",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "opacity",
  "font-family",
  "font-size",
  "font-weight",
  "text-anchor",
  "paint-order",
]

async function layDrawing(
  pen: CanvasRenderingContext2D,
  drawing: SVGSVGElement | null,
  width: number,
  height: number,
): Promise<void> {
  if (drawing === null) throw new Error(takeAway.noDrawing)
  const copy = drawing.cloneNode(true) as SVGSVGElement
  const originals = drawing.querySelectorAll<SVGElement>("*")
  copy.querySelectorAll<SVGElement>("*").forEach((element, index) => {
    const styles = getComputedStyle(originals[index]!)
    for (const look of LOOKS) element.style.setProperty(look, styles.getPropertyValue(look))
  })
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg")
  copy.setAttribute("width", String(width))
  copy.setAttribute("height", String(height))
  const image = new Image()
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(copy))}`
  await image.decode()
  pen.drawImage(image, 0, 0, width, height)
}
