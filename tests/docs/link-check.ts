import { existsSync, readFileSync } from "node:fs"
import { dirname, join } from "node:path"

/** Text outside fenced and inline code, where a bracket is a link and a # a heading. */
const prose = (text: string) => text.replace(/^(```|~~~)[\s\S]*?^\1.*$/gm, "").replace(/`[^`\n]*`/g, "``")

/**
 * The anchors of a Markdown text as code hosts make them: a heading in lower case without punctuation, spaces as
 * hyphens, `-1`, `-2` … after a repeated one; and every explicit `id` or `name`.
 */
export function anchors(text: string): Set<string> {
  const found = new Set<string>()
  const withoutFences = text.replace(/^(```|~~~)[\s\S]*?^\1.*$/gm, "")
  for (const [, heading = ""] of withoutFences.matchAll(/^#{1,6}\s+(.+?)\s*#*$/gm)) {
    const slug = heading
      .replace(/!?\[([^\]]*)\]\([^)]*\)/g, "$1")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\p{M} _-]/gu, "")
      .replaceAll(" ", "-")
    let anchor = slug
    for (let repeat = 1; found.has(anchor); repeat++) anchor = `${slug}-${repeat}`
    found.add(anchor)
  }
  for (const [, id = ""] of withoutFences.matchAll(/<[^>]+\s(?:id|name)="([^"]+)"/g)) found.add(id)
  return found
}

/** Where the links and pictures of a Markdown text lead: inline, reference definitions, href and src. */
export function links(text: string): string[] {
  const plain = prose(text)
  return [
    ...plain.matchAll(/\]\(\s*<?([^)\s>]+)>?(?:\s+"[^"]*")?\s*\)/g),
    ...plain.matchAll(/^\s*\[[^\]]+\]:\s*<?([^\s>]+)>?/gm),
    ...plain.matchAll(/\s(?:href|src)="([^"]+)"/g),
  ].map(([, target = ""]) => target)
}

/**
 * What is wrong with the links of one document. Links to the net are left alone: they need one.
 *
 * @param root folder the document's path counts from
 * @param document its path
 * @returns a sentence for each link that leads nowhere
 */
export function brokenLinks(root: string, document: string): string[] {
  const text = readFileSync(join(root, document), "utf8")
  return links(text).flatMap((link) => {
    if (/^[a-z][a-z0-9+.-]*:/i.test(link)) return []
    const [path = "", anchor] = link.split("#").map(decodeURIComponent)
    const target = path === "" ? join(root, document) : join(root, dirname(document), path)
    if (!existsSync(target)) return [`${document}: ${link} leads to no file`]
    if (anchor && target.endsWith(".md") && !anchors(readFileSync(target, "utf8")).has(anchor)) {
      return [`${document}: ${link} leads to no heading`]
    }
    return []
  })
}
