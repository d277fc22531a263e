import { defineConfig } from "@playwright/test"

export default defineConfig({ testDir: ".", testMatch: "*.browser.ts", outputDir: "../../../test-results/planted" })
