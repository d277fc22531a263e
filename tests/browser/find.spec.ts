import { readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, type Page, test } from "@playwright/test"
import { searchWhole } from "../../src/core/find"
import { foundSetup, questionFor, setupSpace } from "../../src/scene/find"
import { parseKit } from "../../src/scene/kit"
import { barriers, dropFile, numberShown, open, sceneIn, shippedText } from "./page"
import { openFlat } from "./panelsPage"

const kitText = readFileSync(join(import.meta.dirname, "../../scenes/kits/target-club-box.json"), "utf8")

/** What the search lists when it runs in one go, outside any page. */
function expected() {
  const scene = sceneIn(shippedText("target-recurve-straight-bar"))
  const kit = parseKit(kitText)
  if (!kit.ok) throw new Error("the shipped kit is not valid")
  const space = setupSpace(scene, kit.value, { ...questionFor(scene), variety: "pieces" })
  if (!space.ok) throw new Error("the shipped kit cannot be searched")
  return searchWhole(space.value.problem).found.map((found) => foundSetup(space.value, found))
}

async function openFind(page: Page): Promise<void> {
  await openFlat(page)
  await page.getByRole("tab", { name: "Find" }).click()
  await page.getByLabel("Open an invented kit").selectOption("target-club-box")
  await expect(page.getByText("“Target club box”: 54 pieces.")).toBeVisible()
}

const search = (page: Page) => page.getByRole("button", { name: "Find setups" }).click()
const outcome = (page: Page) => page.locator(".find-outcome")
const row = (page: Page, index: number) => page.locator(`[data-setup="${index}"]`)
const shownMasses = (page: Page) =>
  page
    .locator(".find-table tbody tr[data-setup]")
    .evaluateAll((rows) => rows.map((each) => Number(each.children[1]?.textContent)))

test("the page lists what the search finds, proved, shows one beside the rig, and tries it in one undo step", async ({
  page,
}) => {
  const found = expected()
  await openFind(page)
  await search(page)
  await expect(outcome(page)).toHaveText(/^All [\d,]+ combinations are covered: this list is proved\.$/, {
    timeout: 40_000,
  })
  expect(await shownMasses(page)).toEqual(found.map(({ massG }) => Math.round(massG)))

  await row(page, 2).hover()
  const beside = page.locator('[data-beside="massG"]').first()
  await expect(beside).toHaveAttribute("data-value", /./)
  expect(Number(await beside.getAttribute("data-value"))).toBeCloseTo(found[2]!.massG, 6)
  await expect(page.locator(".flat-beside path").first()).toBeAttached()

  const before = await numberShown(page, "centreMm.forward")
  await page.getByRole("button", { name: "Try setup 3", exact: true }).click()
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeCloseTo(found[2]!.centreMm[0], 6)
  expect(await numberShown(page, "fullDraw.netLiftNm")).toBeCloseTo(found[2]!.netLiftNm, 6)
  await page.getByLabel("Setup 3: what to do").click()
  await expect(page.locator(".find-detail")).toContainText("Nothing to do: it is that rig.")
  await page.getByRole("button", { name: "Undo", exact: true }).click()
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeCloseTo(before, 9)
  await expect(page.locator(".find-detail")).toContainText("swap the rod for")
  expect(await barriers(page, ".find-sheet")).toEqual([])
})

test("with the keyboard alone: from point to point, open one, order the list", async ({ page }) => {
  await openFind(page)
  await search(page)
  await expect(outcome(page)).toHaveText(/proved/, { timeout: 40_000 })
  const masses = await shownMasses(page)
  await page.locator(".find-point[tabindex='0']").focus()
  await page.keyboard.press("End")
  const heaviest = masses.lastIndexOf(Math.max(...masses))
  await expect(page.locator(".find-point[data-marked]")).toHaveAttribute("data-point", String(heaviest))
  await page.keyboard.press("Enter")
  await expect(page.getByLabel(`Setup ${heaviest + 1}: what to do`)).toHaveAttribute("aria-expanded", "true")
  await page.getByRole("button", { name: "Order by mass" }).press("Enter")
  expect(await shownMasses(page)).toEqual([...masses].sort((a, b) => a - b))
  await page.getByRole("button", { name: "Order by mass" }).press("Enter")
  expect(await shownMasses(page)).toEqual([...masses].sort((a, b) => b - a))
})

test("no setup: what binds is said, and the nearest miss can be tried", async ({ page }) => {
  await openFind(page)
  const forward = page.getByRole("group", { name: "Balance point forward" })
  await forward.getByLabel("to").fill("320")
  await forward.getByLabel("to").press("Enter")
  await forward.getByLabel("from").fill("300")
  await forward.getByLabel("from").press("Enter")
  await search(page)
  await expect(outcome(page)).toHaveText(/^No setup from this kit meets every limit/, { timeout: 40_000 })
  const miss = page.locator(".find-misses li").first()
  await expect(miss).toHaveText(/^Balance point forward: (binds|out of reach)/)
  const before = await numberShown(page, "centreMm.forward")
  await miss.getByRole("button", { name: /^Try the nearest/ }).click()
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeGreaterThan(before)
  await page.getByRole("button", { name: "Back to the bow's own targets" }).click()
  await expect(forward.getByLabel("from")).toHaveValue("40")
})

test("a field that cannot be taken holds the search back at the first click, by its name, until it is put right", async ({
  page,
}) => {
  await openFind(page)
  await page.getByRole("checkbox", { name: "Mass" }).check()
  const mass = page.getByLabel("at most", { exact: true }).first()
  await mass.fill("heavy")
  // The field is left by this press, and its error moves the button.
  await search(page)
  await expect(page.getByText("Not searched: “Mass” cannot be taken as it stands. Correct it first.")).toBeInViewport({
    ratio: 1,
  })
  await expect(mass).toHaveValue("heavy")
  await expect(outcome(page)).toHaveCount(0)
  await mass.press("Escape")
  await expect(mass).not.toHaveValue("heavy")
  await expect(page.getByText(/^Not searched/)).toHaveCount(0)

  await page.getByLabel("Best is").selectOption("lightest")
  await mass.fill("light")
  await mass.press("Enter")
  await expect(page.getByText(/^Not searched/)).toHaveCount(0)
  await page.getByRole("button", { name: "Back to the bow's own targets" }).click()
  await search(page)
  await expect(outcome(page)).toHaveText(/proved|No setup/, { timeout: 40_000 })
  await mass.fill("3500")
  await search(page)
  await expect(outcome(page)).toHaveText(/proved|No setup/, { timeout: 40_000 })
})

test("a band the wrong way round is told at its fields at once, and holds the search back", async ({ page }) => {
  await openFind(page)
  const forward = page.getByRole("group", { name: "Balance point forward" })
  await forward.getByLabel("to").fill("75")
  await forward.getByLabel("from").fill("90")
  await forward.getByLabel("from").press("Enter")
  await expect(forward.getByRole("alert")).toHaveText(/^Balance point forward: from 90\.0.mm to 75\.0.mm is no band/)
  await expect(forward.getByLabel("to")).toHaveAttribute("aria-invalid", "true")
  await search(page)
  await expect(page.getByText(/^Not searched: “Balance point forward” cannot be taken/)).toBeVisible()
  await forward.getByLabel("to").fill("95")
  await forward.getByLabel("to").press("Enter")
  await expect(forward.getByRole("alert")).toHaveCount(0)
  await expect(page.getByText(/^Not searched/)).toHaveCount(0)
})

test("pointing at a point of the picture shows that setup in the 3D view and beside the numbers, and takes it away", async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: "reduce" })
  await open(page, "./?scene=target-recurve-straight-bar")
  await page.getByRole("tab", { name: "Find" }).click()
  await page.getByLabel("Open an invented kit").selectOption("target-club-box")
  await search(page)
  await expect(outcome(page)).toHaveText(/proved\.$/, { timeout: 40_000 })
  // Its middle only: numbers stand over its edges, and they change too.
  const { x, y, width, height } = (await page.locator(".view3d canvas").boundingBox())!
  const clip = { x: x + width / 4, y: y + height / 3, width: width / 2, height: height / 2 }
  const drawn = () => page.screenshot({ clip })
  const beside = page.locator('[data-beside="massG"]')
  const point = page.locator('[data-point="2"]')
  await point.scrollIntoViewIfNeeded()
  await page.mouse.move(5, 5)
  await expect(beside).toHaveCount(0)
  const alone = await drawn()
  await point.hover({ force: true })
  await expect(page.locator(".find-point[data-marked]")).toHaveCount(1)
  await expect(beside.first()).toHaveAttribute("data-value", /./)
  await expect.poll(async () => (await drawn()).equals(alone)).toBe(false)
  await page.mouse.move(5, 5)
  await expect(beside).toHaveCount(0)
  await expect.poll(async () => (await drawn()).equals(alone)).toBe(true)
})

test("a kit is edited, undone, kept over a reload, and taken from a dropped table; a bad one is explained", async ({
  page,
}) => {
  await openFind(page)
  await page.getByText("Pieces", { exact: true }).click()
  await page.getByRole("button", { name: "One more, side rod 203" }).click()
  await expect(page.getByText("“Target club box”: 55 pieces.")).toBeVisible()
  await page.getByRole("button", { name: "Undo in the box" }).click()
  await expect(page.getByText("“Target club box”: 54 pieces.")).toBeVisible()
  await page.getByRole("button", { name: "front rod 650", exact: false }).first().click()
  await page.getByRole("textbox", { name: "length" }).fill("660")
  await page.getByRole("textbox", { name: "length" }).press("Enter")
  await page.reload()
  await page.getByRole("tab", { name: "Find" }).click()
  await page.getByText("Pieces", { exact: true }).click()
  await expect(page.getByRole("button", { name: /^front rod 650/ })).toContainText("660")

  await dropFile(page, "mine.csv", "piece,name,count,eachG,outerMm,thicknessMm\ndiscs,brass,7,57,32,9\n")
  await expect(page.getByText("The kit “mine” is in the box on the Find sheet: 7 pieces.")).toBeVisible()
  await dropFile(page, "bad.csv", "piece,name,count,eachG\ndiscs,brass,many,57\n")
  await expect(page.getByText("The kit “bad.csv” was not opened; the box is as it was.")).toBeVisible()
  await expect(page.getByText(/line 2, count/)).toBeVisible()
  await expect(page.getByText("“mine”: 7 pieces.")).toBeVisible()
  await page.getByLabel("Open an invented kit").selectOption("target-club-box")
  await expect(page.getByText(/was not opened/)).toHaveCount(0)
})

test("workers that die are replaced; when all die, what was found is told with the reason", async ({ page }) => {
  // The first two workers break on their first task, and with `?deadly` in the name of the window every one does.
  await page.addInitScript(() => {
    const Real = window.Worker
    let started = 0
    window.Worker = class extends Real {
      private doomed = started++ < 2 || window.name === "deadly"
      override postMessage(message: { kind: string }) {
        if (this.doomed && message.kind === "take")
          setTimeout(() => this.onerror?.(new ErrorEvent("error", { message: "out of memory" })))
        else super.postMessage(message)
      }
    }
  })
  await openFind(page)
  await search(page)
  await expect(outcome(page)).toHaveText(/proved/, { timeout: 40_000 })
  await page.evaluate(() => {
    window.name = "deadly"
  })
  await search(page)
  await expect(outcome(page)).toHaveText(/^The search broke off \(out of memory\)\. Nothing found yet\. Stopped with/, {
    timeout: 40_000,
  })
})

test("a list of an earlier question or kit says so and is not called proved; trying one of it changes neither", async ({
  page,
}) => {
  await openFind(page)
  await search(page)
  await expect(outcome(page)).toHaveText(/proved\.$/, { timeout: 40_000 })
  await page.getByRole("button", { name: "Try setup 2", exact: true }).click()
  await expect(outcome(page)).toHaveText(/proved\.$/)
  await expect(page.getByRole("heading", { name: "20 setups", exact: true })).toBeVisible()

  const forward = page.getByRole("group", { name: "Balance point forward" })
  await forward.getByLabel("to").fill("83")
  await forward.getByLabel("to").press("Enter")
  await expect(page.getByRole("heading", { name: "20 setups for the earlier question" })).toBeVisible()
  await expect(outcome(page)).toHaveText(
    /^This list belongs to the earlier question: .* proves nothing for what is asked now/,
  )
  await page.getByRole("button", { name: "Back to the bow's own targets" }).click()
  await expect(outcome(page)).toHaveText(/proved\.$/)

  await page.getByText("Pieces", { exact: true }).click()
  await page.getByRole("button", { name: "One less, side rod 203" }).click()
  await expect(outcome(page)).toHaveText(/^This list belongs to the earlier kit: /)
  const before = await numberShown(page, "massG")
  await page.getByRole("button", { name: "Try setup 5", exact: true }).click()
  await expect.poll(() => numberShown(page, "massG")).not.toBeCloseTo(before, 3)
})

test("workers that fall silent are noticed in seconds, told and replaced", async ({ page }) => {
  await page.addInitScript(() => {
    const Real = window.Worker
    let started = 0
    window.Worker = class extends Real {
      private deaf = started++ < 2
      override postMessage(message: { kind: string }) {
        if (!this.deaf || message.kind === "ask") super.postMessage(message)
      }
    }
  })
  await openFind(page)
  await search(page)
  await expect(
    page.getByText(/lost \(a worker fell silent\); (another does its part|others do their parts) again/),
  ).toBeVisible({
    timeout: 15_000,
  })
  await expect(outcome(page)).toHaveText(/proved\.$/, { timeout: 40_000 })
})

test("a page that was frozen goes on with its search when it is awake again, and says so", async ({ page }) => {
  // Each order takes its time, so that the search is still at it when the page falls asleep.
  await page.addInitScript(() => {
    const Real = window.Worker
    window.Worker = class extends Real {
      override postMessage(message: { kind: string }) {
        setTimeout(() => super.postMessage(message), message.kind === "take" ? 400 : 0)
      }
    }
  })
  await openFind(page)
  await search(page)
  await expect(page.getByRole("progressbar", { name: "Combinations covered" })).toBeVisible()
  // A browser without a window freezes no page, so only its events are given.
  await page.evaluate(() => document.dispatchEvent(new Event("freeze")))
  await new Promise((resolve) => setTimeout(resolve, 2_000))
  await page.evaluate(() => document.dispatchEvent(new Event("resume")))
  await expect(page.getByText(/^The page was asleep for \d.s; the search goes on from where it was\.$/)).toBeVisible()
  await expect(outcome(page)).toHaveText(/proved\.$/, { timeout: 40_000 })
})

test("a search under way shows how far it is and can be stopped with the best so far", async ({ page }) => {
  await openFind(page)
  await page.getByText("More limits, and what may be built").click()
  await page.getByRole("radio", { name: "each for itself" }).check()
  // Far more discs than anyone stacks, so that the search is still at it when it is stopped.
  const most = page.getByLabel("discs on one stack at most")
  await most.fill("11")
  await most.press("Enter")
  await search(page)
  await expect(page.getByRole("progressbar", { name: "Combinations covered" })).toBeVisible()
  await page.getByRole("tab", { name: "Rig" }).click()
  await page.getByRole("tab", { name: "Find" }).click()
  await expect(page.locator(".find-table")).toBeVisible({ timeout: 40_000 })
  const stop = page.getByRole("button", { name: "Stop" })
  if (await stop.isVisible()) {
    await stop.click()
    await expect(outcome(page)).toHaveText(/^(Stopped with [\d.]+\u00a0% of|All) /)
  }
  await expect(page.getByRole("button", { name: "Find setups" })).toHaveAttribute("aria-disabled", "false")
})

test("a search that the closing of the page cut off is told at the next visit, with kit and question kept", async ({
  page,
}) => {
  await page.addInitScript(() => {
    const Real = window.Worker
    window.Worker = class extends Real {
      // As in a tab that sleeps: nothing comes back.
      override postMessage() {}
    }
  })
  await openFind(page)
  await page.getByLabel("Best is").selectOption("lightest")
  await search(page)
  await expect(outcome(page)).toHaveText("Listing what can be built…")
  await page.reload()
  await page.getByRole("tab", { name: "Find" }).click()
  await expect(page.getByText(/^The last search was cut off/)).toBeVisible()
  await expect(page.getByText("“Target club box”: 54 pieces.")).toBeVisible()
  await expect(page.getByLabel("Best is")).toHaveValue("lightest")
})

test.describe("by touch on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true })

  test("what to do for the nearest miss is opened with a tap and shows it beside the rig", async ({ page }) => {
    await openFind(page)
    const forward = page.getByRole("group", { name: "Balance point forward" })
    for (const [label, value] of [
      ["to", "320"],
      ["from", "300"],
    ] as const) {
      await forward.getByLabel(label).fill(value)
      await forward.getByLabel(label).press("Enter")
    }
    await page.getByRole("button", { name: "Find setups" }).tap()
    const miss = page
      .locator(".find-misses li")
      .filter({ has: page.getByRole("button") })
      .first()
    await expect(miss).toBeVisible({ timeout: 40_000 })
    await miss.getByRole("button", { name: /^What to do, the nearest/ }).tap()
    await expect(miss.getByRole("heading", { name: "From the rig as it is" })).toBeVisible()
    await expect(page.locator('[data-beside="massG"]').first()).toHaveAttribute("data-value", /./)
    await miss.getByRole("button", { name: /^What to do/ }).tap()
    await expect(miss.getByRole("heading")).toHaveCount(0)
  })

  test("a setup is opened and tried with taps", async ({ page }) => {
    await openFind(page)
    await page.getByRole("button", { name: "Find setups" }).tap()
    await expect(outcome(page)).toHaveText(/proved/, { timeout: 40_000 })
    await page.getByLabel("Setup 2: what to do").tap()
    await expect(page.locator('[data-beside="massG"]').first()).toBeAttached()
    const before = await numberShown(page, "centreMm.forward")
    await page.getByRole("button", { name: "Try setup 2", exact: true }).tap()
    await expect.poll(() => numberShown(page, "centreMm.forward")).not.toBeCloseTo(before, 3)
    for (const button of await page.locator(".find-table button").all()) {
      const box = await button.boundingBox()
      expect(Math.min(box!.width, box!.height)).toBeGreaterThanOrEqual(44)
    }
  })
})

test.describe("in French on the narrowest phone", () => {
  test.use({ viewport: { width: 320, height: 640 }, locale: "fr-FR" })

  test("the sheet searches, counts and lists within the screen, with a comma in its numbers", async ({ page }) => {
    await openFlat(page)
    await page.getByRole("tab", { name: "Chercher" }).click()
    await page.getByLabel("Ouvrir une boîte inventée").selectOption("target-club-box")
    await expect(page.getByText("«\u00a0Target club box\u00a0»\u00a0: 54 pièces.")).toBeVisible()
    await page.getByLabel("au plus", { exact: true }).fill("3 050,5")
    await page.getByLabel("au plus", { exact: true }).press("Enter")
    await page.getByRole("button", { name: "Chercher des réglages" }).click()
    await expect(outcome(page)).toHaveText(/^Toutes les combinaisons \([\d\s]+\) sont couvertes/, { timeout: 40_000 })
    await expect(row(page, 0)).toContainText(/\d,\d/)
    await page.getByLabel("Réglage 1\u00a0: que faire").click()
    const [table, sheet] = [page.locator(".find-table"), page.locator(".find-sheet")]
    expect((await table.boundingBox())!.width).toBeLessThanOrEqual((await sheet.boundingBox())!.width)
  })
})
