/**
 * Orders `order[from … to]` so that the entry at `middle` has its sorted place by `key` and no smaller key stands after
 * it: Hoare's selection, in place, about linear time.
 */
export function halve(order: Int32Array, key: Float64Array, from: number, to: number, middle: number): void {
  let low = from
  let high = to
  while (low < high) {
    const pivot = key[order[(low + high) >> 1]!]!
    let left = low
    let right = high
    while (left <= right) {
      while (key[order[left]!]! < pivot) left++
      while (key[order[right]!]! > pivot) right--
      if (left > right) continue
      const held = order[left]!
      order[left] = order[right]!
      order[right] = held
      left++
      right--
    }
    if (middle <= right) high = right
    else if (middle >= left) low = left
    else return
  }
}
