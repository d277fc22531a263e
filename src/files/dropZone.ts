/**
 * Lets a file be dropped anywhere on the page; `over` says whether one hangs over it, `take` gets it. Returns a stop
 * function.
 */
export function acceptDrops(over: (hanging: boolean) => void, take: (file: File) => void): () => void {
  const hasFile = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false
  const drag = (event: DragEvent) => {
    if (!hasFile(event)) return
    event.preventDefault()
    over(true)
  }
  const leave = (event: DragEvent) => {
    if (event.relatedTarget === null) over(false)
  }
  const drop = (event: DragEvent) => {
    if (!hasFile(event)) return
    event.preventDefault()
    over(false)
    const file = event.dataTransfer?.files[0]
    if (file !== undefined) take(file)
  }
  window.addEventListener("dragover", drag)
  window.addEventListener("dragleave", leave)
  window.addEventListener("drop", drop)
  return () => {
    window.removeEventListener("dragover", drag)
    window.removeEventListener("dragleave", leave)
    window.removeEventListener("drop", drop)
  }
}
