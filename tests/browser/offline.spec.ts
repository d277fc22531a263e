import { readFileSync } from "node:fs"
import { join, resolve } from "node:path"
import { expect, type Page, test } from "@playwright/test"
import { type FolderServer, serveFolder } from "./folderServer"
import { dropFile, handle, handleValue, nameField, press, sceneIn, shippedText, untilReady, withoutWebGl } from "./page"

test.use({ serviceWorkers: "allow" })

const dist = resolve(join(import.meta.dirname, "../.."), process.env.BENCH_DIST ?? "dist")
const ROD = "front/rod:lengthMm"

let server: FolderServer
test.beforeEach(async () => {
  server = await serveFolder(dist)
})
test.afterEach(() => server.stop())

/** Opens the page and waits until the browser keeps all of it. */
async function visit(page: Page): Promise<void> {
  await page.goto(server.address)
  await untilReady(page)
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (navigator.serviceWorker.controller === null) {
      await new Promise((taken) => navigator.serviceWorker.addEventListener("controllerchange", taken, { once: true }))
    }
  })
}

test("after one visit the whole bench opens and works without a network: every sheet, every bow, the card and a link", async ({
  page,
  context,
}) => {
  await withoutWebGl(page)
  await visit(page)
  await server.stop()
  await context.setOffline(true)
  const complaints: string[] = []
  page.on("pageerror", (error) => complaints.push(error.message))

  await page.reload()
  await untilReady(page)
  for (const name of await page.getByRole("tab").allTextContents()) {
    await page.getByRole("tab", { name, exact: true }).click()
    await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
  }
  await page.getByRole("button", { name: "Examples" }).click()
  const swinging = sceneIn(shippedText("field-recurve-swinging-weights"))
  await page.getByRole("button", { name: swinging.name }).click()
  await expect(nameField(page)).toHaveValue(swinging.name)
  await page.getByRole("button", { name: "Share or print" }).click()
  const link = await page.getByRole("textbox", { name: "A link that holds the setup" }).inputValue()
  await page.getByRole("button", { name: "Setup card…" }).click()
  await expect(page.locator(".card-drawing svg")).toBeVisible()

  await page.goto(`${server.address}?scene=compound-front-and-back-bar`)
  await untilReady(page)
  await expect(nameField(page)).toHaveValue(sceneIn(shippedText("compound-front-and-back-bar")).name)
  const other = await context.newPage()
  await withoutWebGl(other)
  await other.goto(link)
  await untilReady(other)
  await expect(nameField(other)).toHaveValue(swinging.name)
  expect(complaints).toEqual([])
})

test("the solid picture draws without a network too", async ({ page, context }) => {
  await visit(page)
  await context.setOffline(true)
  await page.reload()
  await untilReady(page)
  await expect(page.locator(".stage-solid:not(.stage-waiting) canvas")).toBeVisible()
})

test("a newer version waits, is announced when no other notice stands, and opens when asked with the work as it was", async ({
  page,
}) => {
  await withoutWebGl(page)
  await visit(page)
  const length = await handleValue(handle(page, ROD))
  await press(page, ROD, "Shift+ArrowUp", 2)
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(length + 100)
  await dropFile(page, "odd.json", "{")
  await expect(page.getByRole("alert")).toBeVisible()

  const read = (file: string) => readFileSync(join(dist, file), "utf8")
  server.replace("index.html", read("index.html").replace("<title>", "<title>Newer "))
  server.replace("sw.js", read("sw.js").replace(/"[0-9a-f]{16}"/, '"ffff000000000000"'))
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready
    await registration.update()
    const waits = () => registration.waiting !== null
    while (!waits()) await new Promise((later) => setTimeout(later, 50))
  })
  const news = page.getByText("A newer version of the bench is ready.", { exact: false })
  await expect(news).toHaveCount(0)
  await expect(page).toHaveTitle("Bow Balance Bench")
  // The page goes on with its own version: what it has not loaded yet is still there.
  await page.getByRole("tab", { name: "Bow", exact: true }).click()
  await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)

  await page.getByRole("button", { name: "Close" }).click()
  await expect(news).toBeVisible()
  await page.getByRole("button", { name: "Open it now" }).click()
  await expect(page).toHaveTitle("Newer Bow Balance Bench")
  await untilReady(page)
  expect(await handleValue(handle(page, ROD))).toBe(length + 100)
})

test("the page can be installed: a manifest with a name and icons of the sizes that it says", async ({ page }) => {
  await page.goto(server.address)
  const address = await page.locator('link[rel="manifest"]').evaluate((link) => (link as HTMLLinkElement).href)
  const manifest = JSON.parse(await (await page.request.get(address)).text())
  expect(manifest).toMatchObject({ name: "Bow Balance Bench", start_url: "./", scope: "./", display: "standalone" })
  for (const { src, sizes, type } of manifest.icons) {
    const icon = await page.request.get(new URL(src, address).href)
    expect(icon.headers()["content-type"]).toBe(type)
    if (sizes === "any") continue
    const bytes = await icon.body()
    // A PNG has its width and height at bytes 16 and 20 (ISO/IEC 15948, 11.2.2).
    expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes)
  }
})
