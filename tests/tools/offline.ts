import { createHash } from "node:crypto"
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { buildSync } from "esbuild"
import type { Plugin } from "vite"

const root = join(import.meta.dirname, "../..")

const manifest = {
  id: "./",
  name: "Bow Balance Bench",
  short_name: "Bow bench",
  description: "Balance, moment arm and turn resistance of a bow and its stabilisers, live.",
  lang: "en",
  start_url: "./",
  scope: "./",
  display: "standalone",
  background_color: "#f4f3f0",
  theme_color: "#222427",
  icons: [
    { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
    { src: "icon-192.png", sizes: "192x192", type: "image/png" },
    { src: "icon-512.png", sizes: "512x512", type: "image/png" },
    { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
  ],
}

const icons = ["icon.svg", "icon-180.png", "icon-192.png", "icon-512.png"]

/** In the built page's head. The development server has none of it: a kept page would hide every change from it. */
const tags = [
  { tag: "link", attrs: { rel: "manifest", href: "./manifest.webmanifest" } },
  { tag: "link", attrs: { rel: "icon", href: "./icon.svg", type: "image/svg+xml" } },
  { tag: "link", attrs: { rel: "apple-touch-icon", href: "./icon-180.png" } },
  { tag: "meta", attrs: { name: "theme-color", content: "#ffffff", media: "(prefers-color-scheme: light)" } },
  { tag: "meta", attrs: { name: "theme-color", content: "#222427", media: "(prefers-color-scheme: dark)" } },
]

/** Makes the build installable and able to open without a network: manifest, icons, and a service worker that keeps all. */
export function offline(): Plugin {
  return {
    name: "offline",
    apply: "build",
    enforce: "post",
    transformIndexHtml: {
      order: "post",
      handler: (html) => ({
        html: html.replace('<link rel="icon" href="data:," />', ""),
        tags: tags.map((tag) => ({ ...tag, injectTo: "head" as const })),
      }),
    },
    generateBundle: {
      order: "post",
      handler(_options, bundle) {
        for (const file of icons) {
          this.emitFile({ type: "asset", fileName: file, source: readFileSync(join(root, "assets", file)) })
        }
        this.emitFile({ type: "asset", fileName: "manifest.webmanifest", source: JSON.stringify(manifest) })
        const hash = createHash("sha256")
        const files = Object.values(bundle).sort((a, b) => (a.fileName < b.fileName ? -1 : 1))
        for (const file of files) hash.update(file.fileName).update(file.type === "chunk" ? file.code : file.source)
        const names = [...new Set([...files.map(({ fileName }) => fileName), "manifest.webmanifest", ...icons])]
        this.emitFile({ type: "asset", fileName: "sw.js", source: worker(names, hash.digest("hex").slice(0, 16)) })
      },
    },
  }
}

/** Ends a service worker that a build left on the development server's address, and shows the page without it. */
const LEAVE = `
addEventListener("install", () => skipWaiting())
addEventListener("activate", (event) => event.waitUntil(leave()))
async function leave() {
  for (const name of await caches.keys()) await caches.delete(name)
  await registration.unregister()
  const pages = await clients.matchAll({ type: "window", includeUncontrolled: true })
  for (const page of pages) page.navigate(page.url).catch(() => undefined)
}
`

/**
 * For the development server, which often has the address of an earlier `npm start`: the worker kept from there would go
 * on showing the built page.
 */
export function notOffline(): Plugin {
  return {
    name: "not-offline",
    apply: "serve",
    configureServer(server) {
      server.middlewares.use("/sw.js", (_request, response) => {
        response.setHeader("Content-Type", "text/javascript")
        response.setHeader("Cache-Control", "no-store")
        response.end(LEAVE)
      })
    },
  }
}

/** The service worker's script, with the files of this build in it. */
function worker(files: readonly string[], version: string): string {
  const { outputFiles } = buildSync({
    entryPoints: [join(root, "src/app/offline/worker.ts")],
    bundle: true,
    write: false,
    minify: true,
    format: "iife",
    target: "es2022",
    define: { FILES: JSON.stringify(files), VERSION: JSON.stringify(version) },
  })
  return outputFiles[0]!.text
}
