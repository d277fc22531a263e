import type { Page } from "@playwright/test"
import { PDFiumLibrary } from "@hyzyla/pdfium"
import decode from "qr/decode.js"

/** One page of a PDF as another program than the browser that made it draws it. */
export interface PrintedPage {
  readonly widthMm: number
  readonly heightMm: number
  readonly text: string
  /** Colour of the very last pixel at the foot, in the middle. */
  readonly edge: readonly number[]
  /** What the code on the page says, read off the drawn page. Throws where there is none. */
  code(): string
}

/** Drawn at this many dots to a point: 216 to the inch, what a poor printer does. */
const SCALE = 3
const MM_PER_POINT = 25.4 / 72

export async function renderedPages(pdf: Uint8Array): Promise<PrintedPage[]> {
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(pdf)
  const pages: PrintedPage[] = []
  for (const page of document.pages()) {
    // Before it is drawn: drawing closes the page.
    const text = page.getText().replace(/\s+/g, " ")
    const { data, width, height, originalWidth, originalHeight } = await page.render({
      scale: SCALE,
      render: async ({ data: pixels }) => pixels,
    })
    const last = 4 * ((height - 1) * width + Math.floor(width / 2))
    pages.push({
      widthMm: originalWidth * MM_PER_POINT,
      heightMm: originalHeight * MM_PER_POINT,
      text,
      edge: [...data.subarray(last, last + 3)],
      code: () => decode({ width, height, data }, { timeLimit: 5000 }),
    })
  }
  document.destroy()
  library.destroy()
  return pages
}

/** What a code in a picture of the page says. */
export async function decodeQR(page: Page, png: Buffer): Promise<string> {
  const image = await page.evaluate(
    async (address) => {
      const picture = new Image()
      picture.src = address
      await picture.decode()
      const canvas = document.createElement("canvas")
      // Larger, as a camera near it would see it.
      canvas.width = picture.width * 4
      canvas.height = picture.height * 4
      const pen = canvas.getContext("2d")!
      pen.imageSmoothingEnabled = false
      pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
      const { data, width, height } = pen.getImageData(0, 0, canvas.width, canvas.height)
      let grey = ""
      for (let at = 0; at < data.length; at += 4) grey += data[at]! < 128 ? "1" : "0"
      return { grey, width, height }
    },
    `data:image/png;base64,${png.toString("base64")}`,
  )
  const { grey, width, height } = image
  const data = Uint8Array.from({ length: 4 * grey.length }, (_, at) => (at % 4 < 3 && grey[at >> 2] === "1" ? 0 : 255))
  return decode({ width, height, data }, { timeLimit: 5000 })
}
