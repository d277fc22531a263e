import { createHash } from "node:crypto"
import { readdirSync, statSync } from "node:fs"
import { join } from "node:path"

/**
 * Says whether anything that goes into a build has changed since: a short hash of every file's path, size and time of
 * change. Unlike comparing times alone it also notices files removed, or moved in with an old time.
 *
 * @param {string} root absolute path of the project
 * @param {readonly string[]} paths files and folders under it; one that is missing counts as missing
 * @returns {string} 16 hexadecimal digits
 */
export function sourceStamp(root, paths) {
  const hash = createHash("sha256")
  const visit = (path) => {
    const found = statSync(join(root, path), { throwIfNoEntry: false })
    if (found?.isDirectory()) {
      for (const name of readdirSync(join(root, path)).sort()) visit(`${path}/${name}`)
    } else {
      hash.update(`${path} ${found?.size} ${found?.mtimeMs}\n`)
    }
  }
  for (const path of paths) visit(path)
  return hash.digest("hex").slice(0, 16)
}
