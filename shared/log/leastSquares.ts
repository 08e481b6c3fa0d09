import { solveLinear } from '../numerics/linear.ts'

export type Fit = { readonly x: readonly number[]; /** Covariance for unit variance of the data, by rows. */ readonly covariance: readonly (readonly number[])[]; readonly squares: number; readonly free: number }

/**
 * Least squares by normal equations for a few unknowns: minimises |A x - b|². Rows are to be divided by their standard deviation first.
 * Returns null where the data cannot tell the unknowns apart.
 * Source: W. H. Press and others, Numerical Recipes, 3rd ed. (2007), 15.4.1
 */
export function leastSquares(rows: readonly (readonly number[])[], b: readonly number[], n: number): Fit | null {
  const normal = new Float64Array(n * n), right = new Float64Array(n)
  for (const [r, row] of rows.entries()) for (let i = 0; i < n; i++) {
    if (row[i] === 0) continue
    right[i]! += row[i]! * b[r]!
    for (let j = 0; j < n; j++) normal[i * n + j]! += row[i]! * row[j]!
  }
  const x = right.slice()
  if (!solveLinear(normal.slice(), x, n)) return null
  const covariance: number[][] = []
  for (let i = 0; i < n; i++) {
    const unit = new Float64Array(n)
    unit[i] = 1
    if (!solveLinear(normal.slice(), unit, n)) return null
    covariance.push([...unit])
  }
  let squares = 0
  for (const [r, row] of rows.entries()) { let miss = -b[r]!; for (let i = 0; i < n; i++) miss += row[i]! * x[i]!; squares += miss * miss }
  return { x: [...x], covariance, squares, free: Math.max(0, rows.length - n) }
}
