/** Ways to cut a number to whole steps; a number said to work is cut toward the side that works. */
export const ROUND = { nearest: Math.round, down: Math.floor, up: Math.ceil } as const
export type Rounding = keyof typeof ROUND
