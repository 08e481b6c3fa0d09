/**
 * Solves A x = b in place by elimination with row exchange, for the small systems of a Newton step.
 * @param a n×n by rows; overwritten
 * @param b right-hand side; becomes x
 * @returns false where A is singular to working precision, and b is then of no use
 * Source: Golub, Van Loan, Matrix Computations, 4th ed. (2013), algorithm 3.4.1
 */
export function solveLinear(a: Float64Array, b: Float64Array, n: number): boolean {
  let largest = 0
  for (let i = 0; i < n * n; i++) largest = Math.max(largest, Math.abs(a[i]!))
  const least = largest * 1e-14
  for (let k = 0; k < n; k++) {
    let pivot = k
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i * n + k]!) > Math.abs(a[pivot * n + k]!)) pivot = i
    // Written so that a NaN counts as singular too.
    if (!(Math.abs(a[pivot * n + k]!) > least)) return false
    if (pivot !== k) {
      for (let j = k; j < n; j++) { const t = a[k * n + j]!; a[k * n + j] = a[pivot * n + j]!; a[pivot * n + j] = t }
      const t = b[k]!; b[k] = b[pivot]!; b[pivot] = t
    }
    for (let i = k + 1; i < n; i++) {
      const m = a[i * n + k]! / a[k * n + k]!
      for (let j = k + 1; j < n; j++) a[i * n + j] = a[i * n + j]! - m * a[k * n + j]!
      b[i] = b[i]! - m * b[k]!
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!
    for (let j = i + 1; j < n; j++) sum -= a[i * n + j]! * b[j]!
    b[i] = sum / a[i * n + i]!
  }
  return true
}
