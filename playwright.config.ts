import { createServer } from "node:net"
import { defineConfig } from "@playwright/test"
import { featuresOff } from "./tests/tools/browser-features"
import { findBrowser } from "./tests/tools/find-browser"

/** A port nobody listens on, so that two runs on one machine do not meet. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.once("error", reject)
    server.listen(0, "127.0.0.1", () => {
      const address = server.address()
      server.close(() => (address && typeof address === "object" ? resolve(address.port) : reject(address)))
    })
  })
}

// Each worker reads this file again and inherits the environment: the first answer is kept there for all of them.
process.env.BENCH_PORT ??= String(await freePort())
process.env.CHROMIUM_PATH = findBrowser()

const address = `http://localhost:${process.env.BENCH_PORT}`

export default defineConfig({
  testDir: "tests/browser",
  outputDir: "test-results/browser",
  reporter: [["list"]],
  workers: 2,
  // Frames drawn in software on a busy machine can come too late once; twice is a fault.
  retries: 1,
  forbidOnly: true,
  // Software drawing on a shared machine: a page with the 3D view needs seconds, not the default fraction.
  timeout: 60_000,
  expect: { timeout: 10_000 },
  globalTimeout: 25 * 60_000,
  use: {
    baseURL: address,
    // Metric units and English, whatever this machine is set to.
    locale: "en-GB",
    viewport: { width: 1280, height: 720 },
    deviceScaleFactor: 1,
    // Each test's browser would keep the whole page; the test of that asks for it.
    serviceWorkers: "block",
    screenshot: "only-on-failure",
    launchOptions: {
      executablePath: process.env.CHROMIUM_PATH,
      args: ["--no-sandbox", `--disable-features=${featuresOff.join(",")}`],
    },
  },
  webServer: {
    command: `node --import tsx tests/tools/start.ts --port ${process.env.BENCH_PORT} --strict-port`,
    url: address,
    reuseExistingServer: false,
    timeout: 120_000,
    gracefulShutdown: { signal: "SIGTERM", timeout: 2_000 },
  },
})
