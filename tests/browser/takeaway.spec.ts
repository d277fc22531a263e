import { readFileSync } from "node:fs"
import { join } from "node:path"
import { type Download, expect, type Page, test } from "@playwright/test"
import { decodeQR } from "./printed"
import { serializeScene } from "../../src/scene/serialize"
import { newScene } from "../../src/scene/templates"
import {
  barriers,
  dropFile,
  nameField,
  numberShown,
  open,
  press,
  sceneIn,
  shippedText,
  untilReady,
  withoutWebGl,
} from "./page"
import { french } from "../../src/words/fr"
import { openFlat } from "./panelsPage"
import { renderedPages } from "./printed"

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true })
const share = (page: Page) => button(page, "Share or print").click()
const linkField = (page: Page) => page.getByRole("textbox", { name: "A link that holds the setup" })
const DROOPED = sceneIn(shippedText("target-recurve-drooped-bar"))

async function bytesOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path())
}

async function made(page: Page, word: string): Promise<Download> {
  const download = page.waitForEvent("download")
  await button(page, word).click()
  return download
}

test("the link that is copied opens the same setup on another page, and a reload there goes on with the work", async ({
  page,
  context,
}) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"])
  await openFlat(page)
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 2)
  const forward = await numberShown(page, "centreMm.forward")
  await share(page)
  await expect(page.getByRole("dialog", { name: "Share or print" })).toBeVisible()
  await button(page, "Copy the link").click()
  await expect(page.getByText("The link is copied.")).toBeVisible()
  const link = await page.evaluate(() => navigator.clipboard.readText())
  expect(link).toBe(await linkField(page).inputValue())
  const code = await page.locator(".takeaway .qr").screenshot()
  expect(await decodeQR(page, code)).toBe(link)

  const other = await context.newPage()
  await withoutWebGl(other)
  await other.goto(link)
  await untilReady(other)
  expect(await numberShown(other, "centreMm.forward")).toBeCloseTo(forward, 9)
  expect(new URL(other.url()).hash).toBe("")
  await press(other, "front/rod:lengthMm", "Shift+ArrowUp", 3)
  await expect.poll(() => numberShown(other, "centreMm.forward")).not.toBeCloseTo(forward, 3)
  const longer = await numberShown(other, "centreMm.forward")
  await other.waitForTimeout(600)
  await other.reload()
  await untilReady(other)
  expect(await numberShown(other, "centreMm.forward")).toBeCloseTo(longer, 9)
})

test("a link followed while work is on the bench is one undo step, and a damaged one changes nothing", async ({
  page,
}) => {
  await openFlat(page, "beginner-one-rod")
  const name = await nameField(page).inputValue()
  const { linkTo } = await import("../../src/takeaway/link/link")
  const link = linkTo(DROOPED, page.url(), { everything: true })
  const hash = new URL(link).hash
  await page.evaluate(
    (to) => {
      location.hash = to
    },
    hash.slice(0, -9),
  )
  await expect(page.getByText("The setup in the link was not opened; the bench is as it was.")).toBeVisible()
  await expect(nameField(page)).toHaveValue(name)
  await page.evaluate((to) => {
    location.hash = to
  }, hash)
  await expect(nameField(page)).toHaveValue(DROOPED.name)
  await button(page, "Undo").click()
  await expect(nameField(page)).toHaveValue(name)

  await share(page)
  await page.getByLabel("Open a link somebody gave you").fill("https://bench.example/")
  await button(page, "Open").click()
  await expect(page.getByRole("dialog").getByRole("alert")).toHaveText("there is no setup in the link.")
  await page.getByLabel("Open a link somebody gave you").fill(link)
  await button(page, "Compare with it").click()
  await expect(page.locator(".compare-name")).toContainText(DROOPED.name)
  await expect(nameField(page)).toHaveValue(name)
  await expect(button(page, "Share or print")).toBeFocused()
})

for (const [paper, width, height] of [
  ["A4", 210, 297],
  ["Letter", 215.9, 279.4],
] as const) {
  test(`the card prints on one page of ${paper}, whatever the screen, with a code that opens the setup`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: "dark" })
    await openFlat(page, "target-recurve-drooped-bar")
    await share(page)
    await button(page, "Setup card…").click()
    const card = page.getByRole("dialog", { name: "Setup card" })
    await card.getByLabel(paper, { exact: true }).check()
    await expect(card.locator(".card-drawing svg")).toBeVisible()
    expect(await barriers(page, ".card-desk")).toEqual([])
    const pages = await renderedPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }))
    expect(pages).toHaveLength(1)
    const [printed] = pages
    expect(printed!.widthMm).toBeCloseTo(width, 0)
    expect(printed!.heightMm).toBeCloseTo(height, 0)
    for (const words of [
      DROOPED.name,
      "Both side arms: splay 46°, droop 28°",
      "Rod 254 mm 2 × 62 g",
      "Nose-down moment",
      "inside",
      "Assumed: every number",
      "Never release a drawn bow without an arrow",
    ]) {
      expect(printed!.text).toContain(words)
    }
    // Nothing of the page around it.
    expect(printed!.text).not.toContain("Undo")
    expect(printed!.edge).toEqual([255, 255, 255])
    const { readLink } = await import("../../src/takeaway/link/link")
    expect(readLink(printed!.code())).toEqual({ ok: true, value: DROOPED })

    await page.keyboard.press("Escape")
    await expect(page.getByRole("dialog", { name: "Share or print" })).toBeVisible()
    await page.keyboard.press("Escape")
    await expect(button(page, "Share or print")).toBeFocused()
  })
}

test("in French too the card is one page of either paper, in type that can be read", async ({ page }) => {
  await withoutWebGl(page)
  await open(page, "./?scene=target-recurve-drooped-bar&language=fr")
  await button(page, french.bar.takeAway).click()
  await button(page, "Fiche de réglage…").click()
  const card = page.getByRole("dialog", { name: "Fiche de réglage" })
  for (const paper of ["A4", "Lettre"]) {
    await card.getByLabel(paper, { exact: true }).check()
    await expect(card.locator(".card-drawing svg")).toBeVisible()
    const printed = await renderedPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }))
    expect(printed).toHaveLength(1)
    for (const words of [
      "Les deux latéraux",
      "Moment de piqué",
      "Supposé",
      "Ne jamais lâcher la corde d’un arc armé",
    ]) {
      expect(printed[0]!.text).toContain(words)
    }
    expect(printed[0]!.edge).toEqual([255, 255, 255])
    const type = await card.locator(".card-sheet").evaluate((sheet) => sheet.style.getPropertyValue("--card-type"))
    expect(Number.parseFloat(type), "points").toBeGreaterThanOrEqual(7)
  }
  const { readLink } = await import("../../src/takeaway/link/link")
  const [printed] = await renderedPages(await page.pdf({ preferCSSPageSize: true }))
  expect(readLink(printed!.code())).toEqual({ ok: true, value: DROOPED })
})

test("a card with more in it than any rig is still one page, with nothing cut off but notes that say so", async ({
  page,
}) => {
  await openFlat(page, "beginner-one-rod")
  const rod = {
    part: "rod",
    label: "a rod with quite a long name to it",
    massG: 57,
    lengthMm: 130,
    outerMm: 17,
    innerMm: 13,
  }
  const rig = ["front", "upper", "lower", "back"].map((mount) => ({
    mount,
    chain: Array.from({ length: 9 }, () => rod),
  }))
  const full = { ...newScene(), name: "W".repeat(200), notes: "two three five seven ".repeat(400), rig }
  await dropFile(page, "full.json", serializeScene(full as never))
  await expect(nameField(page)).toHaveValue(full.name)
  await share(page)
  await button(page, "Setup card…").click()
  const sheet = page.locator(".card-sheet")
  await expect.poll(() => sheet.evaluate((card) => card.scrollHeight - card.clientHeight)).toBe(0)
  await expect(sheet.getByText("The whole of the notes is in the file.")).toBeVisible()
  await expect(sheet.locator(".card-row-number")).toHaveCount(36)
  expect(await renderedPages(await page.pdf({ preferCSSPageSize: true }))).toHaveLength(1)
})

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  test("the card is as wide as the screen and every control large enough for a thumb", async ({ page }) => {
    await openFlat(page)
    await share(page)
    const small = () =>
      page.getByRole("dialog").evaluate((dialog) =>
        [
          ...dialog.querySelectorAll<HTMLElement>(
            "button, input:not([type=checkbox]):not([type=radio]), label:has(input)",
          ),
        ]
          .map((control) => ({ name: control.textContent, ...control.getBoundingClientRect().toJSON() }))
          .filter(({ height, width }) => height < 43.5 || width < 43.5)
          .map(({ name }) => name),
      )
    expect(await small()).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390)
    await button(page, "Setup card…").click()
    await expect(page.locator(".card-drawing svg")).toBeVisible()
    expect(await small()).toEqual([])
    const desk = page.locator(".card-desk")
    expect(await desk.evaluate((element) => element.scrollWidth - element.clientWidth)).toBeLessThanOrEqual(1)
    const sheet = await page.locator(".card-sheet").boundingBox()
    expect(sheet!.width).toBeGreaterThan(340)
  })
})

test("picture, numbers and solids are made on the page, of the solid picture", async ({ page }) => {
  await open(page, "./?scene=target-recurve-drooped-bar")
  await share(page)
  await expect(page.getByRole("dialog", { name: "Share or print" })).toBeVisible()
  expect(await barriers(page, ".takeaway")).toEqual([])
  const png = await made(page, "Picture (PNG)")
  expect(png.suggestedFilename()).toBe("target-recurve-drooped-v-bar.png")
  const colours = await coloursOf(page, await bytesOf(png))
  // The bow, its rig and its plumb line, not an empty canvas.
  expect(colours).toBeGreaterThan(500)

  const csv = (await bytesOf(await made(page, "Numbers (CSV)"))).toString()
  const mass = await numberShown(page, "massG")
  expect(csv).toContain(`massG,Mass,${mass},g,`)

  const glb = await bytesOf(await made(page, "Solids (GLB)"))
  expect(glb.subarray(0, 4).toString()).toBe("glTF")
  expect(glb.readUInt32LE(8)).toBe(glb.length)
  const { nodes } = JSON.parse(glb.subarray(20, 20 + glb.readUInt32LE(12)).toString())
  expect(nodes.map(({ extras }: { extras?: { path?: string } }) => extras?.path)).toContain("front/vbar/left/rod")
  await expect(page.getByText("target-recurve-drooped-v-bar.glb is made.")).toBeVisible()
})

test("where there is no 3D the picture is of the flat drawing", async ({ page }) => {
  await openFlat(page, "target-recurve-drooped-bar")
  await share(page)
  const colours = await coloursOf(page, await bytesOf(await made(page, "Picture (PNG)")))
  expect(colours).toBeGreaterThan(20)
})

/** How many colours a picture has. */
const coloursOf = (page: Page, png: Buffer): Promise<number> =>
  page.evaluate(
    async (address) => {
      const image = new Image()
      image.src = address
      await image.decode()
      const canvas = document.createElement("canvas")
      canvas.width = image.width
      canvas.height = image.height
      const pen = canvas.getContext("2d")!
      pen.drawImage(image, 0, 0)
      return new Set(new Uint32Array(pen.getImageData(0, 0, image.width, image.height).data.buffer)).size
    },
    `data:image/png;base64,${png.toString("base64")}`,
  )

// Written on demand only: a test run leaves the working tree as it was.
if (process.env.BENCH_PICTURES === "1") {
  test("the picture of a setup card for the README", async ({ page }) => {
    await page.setViewportSize({ width: 900, height: 1300 })
    await page.emulateMedia({ colorScheme: "light" })
    await openFlat(page, "target-recurve-drooped-bar")
    await share(page)
    await button(page, "Setup card…").click()
    await page.getByLabel("A4", { exact: true }).check()
    await expect(page.locator(".card-drawing svg")).toBeVisible()
    await page.locator(".card-sheet").screenshot({ path: join(import.meta.dirname, "../../assets/card.png") })
  })
}
