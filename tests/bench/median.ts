const WARM_UP = 40
const BATCHES = 15
const IN_BATCH = 20

/** Median time of one call in batches of twenty, ms, after a warm-up. */
export function medianMs(work: () => unknown): number {
  for (let call = 0; call < WARM_UP; call++) work()
  const times = Array.from({ length: BATCHES }, () => {
    const begin = performance.now()
    for (let call = 0; call < IN_BATCH; call++) work()
    return (performance.now() - begin) / IN_BATCH
  })
  return times.sort((a, b) => a - b)[Math.floor(BATCHES / 2)]!
}
