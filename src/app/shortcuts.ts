import { redo, undo } from "../commands/bench"
import type { Command } from "../commands/command"
import { pickFile } from "../files/openFile"
import { saveFile } from "../files/saveFile"
import type { Bench } from "../state/bench"
import { DONE } from "../commands/command"

export const open: Command = {
  id: "open",
  shortcut: "mod+o",
  run(bench) {
    pickFile(bench)
    return DONE
  },
}

export const save: Command = {
  id: "save",
  shortcut: "mod+s",
  run(bench) {
    void saveFile(bench)
    return DONE
  },
}

const commands: readonly Command[] = [undo, redo, open, save]

/** `mod+shift+z` for a key event, as commands write their shortcuts. */
export function chord(event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">): string {
  const parts = []
  if (event.ctrlKey || event.metaKey) parts.push("mod")
  if (event.altKey) parts.push("alt")
  if (event.shiftKey) parts.push("shift")
  return [...parts, event.key.toLowerCase()].join("+")
}

/** The other usual key for redo. */
const ALIASES: Readonly<Record<string, string>> = { "mod+y": "mod+shift+z" }

/** Inputs that hold no text and so have nothing of their own to undo. */
const TEXTLESS = ["range", "checkbox", "radio", "button", "submit", "file", "color"]

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && !TEXTLESS.includes(target.type))

/** Runs commands by their shortcuts, except undo and redo while a text is being typed: there they are the text's. */
export function listenForShortcuts(bench: Bench): () => void {
  const listen = (event: KeyboardEvent) => {
    const pressed = chord(event)
    const command = commands.find((candidate) => candidate.shortcut === (ALIASES[pressed] ?? pressed))
    if (command === undefined) return
    if (isTyping(event.target) && (command === undo || command === redo)) return
    event.preventDefault()
    if (command.enabled === undefined || command.enabled(bench.store.getState())) command.run(bench)
  }
  window.addEventListener("keydown", listen)
  return () => window.removeEventListener("keydown", listen)
}
