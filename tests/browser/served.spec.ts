import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "@playwright/test"

const scenes = join(import.meta.dirname, "../../scenes")
const sceneFiles = readdirSync(scenes)
  .filter((name) => name.endsWith(".json"))
  .sort()

test("every shipped scene is served as it is and listed with its name", async ({ request }) => {
  expect(sceneFiles.length).toBeGreaterThan(0)
  const listed = await (await request.get("scenes/index.json")).json()
  expect(listed).toEqual(
    sceneFiles.map((file) => ({ file, name: JSON.parse(readFileSync(join(scenes, file), "utf8")).name })),
  )
  for (const file of sceneFiles) {
    const served = await request.get(`scenes/${file}`)
    expect(await served.text()).toBe(readFileSync(join(scenes, file), "utf8"))
  }
})

test("a scene that is not there is not found, rather than answered with the page", async ({ request }) => {
  expect((await request.get("scenes/no-such-scene.json")).status()).toBe(404)
})

test("the page may run its own scripts only", async ({ page }) => {
  await page.goto("./")
  const ran = await page.evaluate(() => {
    const script = document.createElement("script")
    script.textContent = "document.documentElement.dataset.planted = 'ran'"
    document.head.append(script)
    return document.documentElement.dataset.planted
  })
  expect(ran).toBeUndefined()
})

test("the page loads without a complaint on the console", async ({ page }) => {
  const complaints: string[] = []
  page.on("pageerror", (error) => complaints.push(error.message))
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text())
  })
  await page.goto("./", { waitUntil: "networkidle" })
  expect(complaints).toEqual([])
})

test("the test browser draws with WebGL 2", async ({ page }) => {
  await page.goto("./")
  const drawn = await page.evaluate(() => {
    const canvas = document.createElement("canvas")
    const gl = canvas.getContext("webgl2")
    if (!gl) return undefined
    gl.clearColor(0.2, 0.4, 0.6, 1)
    gl.clear(gl.COLOR_BUFFER_BIT)
    const pixel = new Uint8Array(4)
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel)
    return [...pixel]
  })
  expect(drawn).toEqual([51, 102, 153, 255])
})
