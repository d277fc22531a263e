/** The report as the process a person starts: streams, exit status, files as they lie on a disk. */
import { spawnSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, test } from "vitest"
import { fullDocument } from "../scene/documents"

const root = join(import.meta.dirname, "../..")
const folder = mkdtempSync(join(tmpdir(), "report-"))
afterAll(() => rmSync(folder, { recursive: true }))

const put = (name: string, content: string | Buffer) => {
  const file = join(folder, name)
  writeFileSync(file, content)
  return file
}
const good = put("good.json", `\uFEFF${JSON.stringify(fullDocument())}`)
const latin = put("latin.json", Buffer.from([0x7b, 0x22, 0xe9, 0x22, 0x3a, 0x31, 0x7d]))

const report = (...words: string[]) =>
  spawnSync(process.execPath, ["--import", "tsx", "src/report/main.ts", ...words], { cwd: root, encoding: "utf8" })

test("a good file, byte-order mark and all: the object on standard output, nothing else, status 0", () => {
  const { stdout, stderr, status } = report(good, "--json")
  expect([stderr, status]).toEqual(["", 0])
  expect(JSON.parse(stdout).parts[0].path).toBe("bow/riser")
})

test("files that cannot be read are each named with the reason in plain words, and status is 2", () => {
  const missing = join(folder, "missing.json")
  const { stdout, stderr, status } = report(good, missing, folder, latin)
  expect([stdout, status]).toEqual(["", 2])
  expect(stderr).toBe(
    `${missing}: there is no such file\n` +
      `${folder}: this is a folder, not a file\n` +
      `${latin}: this is not a text file in UTF-8\n`,
  )
})
