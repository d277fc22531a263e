/**
 * Numbers rounded to `decimals` so that they add up to their rounded sum as shown: each is rounded down, and the
 * units still missing go to those that lost most (the largest-remainder rule). Each differs from its own value by
 * less than one unit of the last digit; what needs no rounding is never touched.
 */
export function roundedToSum(values: readonly number[], decimals: number): number[] {
  const unit = 10 ** decimals
  // Nine more digits hide what binary arithmetic adds, so that 0.1 + 0.2 counts as 0.3.
  const scaled = values.map((value) => Number((value * unit).toFixed(9)))
  const down = scaled.map(Math.floor)
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)
  const missing = Math.round(Number(sum(scaled).toFixed(6))) - sum(down)
  const byLoss = scaled.map((_, index) => index).sort((a, b) => lost(b) - lost(a) || a - b)
  for (const index of byLoss.slice(0, missing)) down[index]! += 1
  return down.map((number) => number / unit)

  function lost(index: number): number {
    return scaled[index]! - down[index]!
  }
}
