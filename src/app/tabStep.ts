/**
 * Where a key leads among tabs laid out row by row in a grid, or null where the key is none of theirs. Left and right go
 * through all of them and around; up and down stay in their column, around too. The last tab fills what its row leaves
 * free, so it stands below every column that has no cell of its own there.
 */
export function tabStep(key: string, at: number, count: number, columns: number): number | null {
  const cells = Math.ceil(count / columns) * columns
  const vertically = (by: number) => Math.min((at + by + cells) % cells, count - 1)
  switch (key) {
    case "ArrowRight":
      return (at + 1) % count
    case "ArrowLeft":
      return (at + count - 1) % count
    case "ArrowDown":
      return vertically(columns)
    case "ArrowUp":
      return vertically(-columns)
    case "Home":
      return 0
    case "End":
      return count - 1
    default:
      return null
  }
}
