import { defineConfig } from "vitest/config"

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/browser/**", "node_modules/**"],
    environment: "node",
    maxWorkers: 2,
    // A test left on `only` would make a short run look like a whole one.
    allowOnly: false,
    // The slowest tests start other programs; on a busy two-core machine each needs seconds.
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
})
