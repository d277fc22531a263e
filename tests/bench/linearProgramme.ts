import { FIRST, type FindProblem, type Limit, MASS, type Options, PITCH, ROLL, SUMS, YAW } from "../../src/core/find"

interface Column {
  readonly name: string
  readonly options: Options
  readonly row: number
}

/**
 * The lightest setup of a problem as a mixed-integer programme in CPLEX's LP format: one yes or no for each option of
 * each branch of each trunk. `constant` is what the objective leaves out. Knows limits on balance, mass and resistance.
 */
export function linearProgramme(problem: FindProblem): { text: string; constant: number } {
  const trunks = problem.trunks.map((trunk, at): { own: Column; branches: Column[][] } => ({
    own: { name: `t${at}`, options: trunk.own, row: 0 },
    branches: trunk.branches.map((options, branch) =>
      Array.from({ length: options.count }, (_, row) => ({ name: `x${at}_${branch}_${row}`, options, row })),
    ),
  }))
  const columns = trunks.flatMap(({ own, branches }) => [own, ...branches.flat()])
  const sum = (of: (column: Column) => number) => {
    const terms = columns.flatMap((column) => {
      const value = of(column)
      return value === 0 ? [] : `${value < 0 ? "-" : "+"} ${Math.abs(value)} ${column.name}`
    })
    // The format has a longest line.
    return terms.join("\n  ")
  }
  const value = (weights: Float64Array, { options, row }: Column) => dot(weights, options.sums, row * SUMS)
  const rows: string[] = [`one: ${trunks.map(({ own }) => own.name).join(" + ")} = 1`]
  for (const { own, branches } of trunks) {
    branches.forEach((branch, at) => {
      rows.push(`${own.name}b${at}: ${branch.map(({ name }) => name).join("\n + ")} - ${own.name} = 0`)
    })
  }
  const kinds = problem.stock.length
  problem.stock.forEach((stock, kind) => {
    const used = sum(({ options, row }) => options.uses[row * kinds + kind]!)
    if (used !== "") rows.push(`kind${kind}: ${used} <= ${stock}`)
  })
  problem.limits.flatMap(linear).forEach(({ weights, atMost }, index) => {
    const kept = dot(weights, problem.base, 0)
    rows.push(`limit${index}: ${sum((column) => value(weights, column))} <= ${atMost - kept}`)
  })
  const mass = sum((column) => column.options.sums[column.row * SUMS + MASS]!)
  const binary = columns.map(({ name }) => ` ${name}`).join("\n")
  return {
    text: `Minimize\n mass: ${mass}\nSubject To\n ${rows.join("\n ")}\nBinary\n${binary}\nEnd\n`,
    constant: problem.base[MASS]! - problem.arrowMass,
  }
}

const dot = (weights: Float64Array, sums: Float64Array, from: number): number =>
  weights.reduce((total, weight, at) => total + weight * sums[from + at]!, 0)

/** A limit as weights on the sums that may come to so much: a balance limit times the mass has no quotient left. */
function linear(limit: Limit): { weights: Float64Array; atMost: number }[] {
  const weights = (entries: readonly (readonly [number, number])[]) => {
    const made = new Float64Array(SUMS)
    for (const [at, weight] of entries) made[at] = weight
    return made
  }
  switch (limit.kind) {
    case "balance": {
      const at = FIRST + limit.axis
      return [
        {
          weights: weights([
            [at, 1],
            [MASS, -limit.max],
          ]),
          atMost: 0,
        },
        {
          weights: weights([
            [at, -1],
            [MASS, limit.min],
          ]),
          atMost: 0,
        },
      ]
    }
    case "mass":
      return [{ weights: weights([[MASS, 1]]), atMost: limit.max }]
    case "resistance":
      return [{ weights: weights([[{ roll: ROLL, yaw: YAW, pitch: PITCH }[limit.axis], -1]]), atMost: -limit.min }]
    default:
      throw new Error(`a limit on ${limit.kind} is not written as a linear programme here`)
  }
}
