import { solveLinear } from './linear.ts'

/** A value at a place. */
export type Sample = readonly [x: number, y: number, value: number]

/**
 * The smoothest surface through scattered samples: a thin plate bent so that it passes through all of them.
 *
 * f(x, y) = a + b x + c y + Σ wᵢ rᵢ² ln rᵢ with Σ wᵢ = Σ wᵢ xᵢ = Σ wᵢ yᵢ = 0
 *
 * @param samples three or more that do not lie on one line; give x and y in like sizes, since distance counts
 * @param smoothing 0 passes through every sample; more lets samples lie beside the surface
 * @returns null where the samples lie on one line or two share a place
 * Source: Duchon, Splines minimizing rotation-invariant semi-norms in Sobolev spaces, Lecture Notes in Mathematics 571 (1977), 85-100
 */
export function thinPlate(samples: readonly Sample[], smoothing = 0): ((x: number, y: number) => number) | null {
  const n = samples.length
  const size = n + 3
  const a = new Float64Array(size * size)
  const w = new Float64Array(size)
  samples.forEach(([x, y, value], i) => {
    for (let j = 0; j < i; j++) a[i * size + j] = a[j * size + i] = bending(x - samples[j]![0], y - samples[j]![1])
    a[i * size + i] = smoothing
    for (const [k, of] of [1, x, y].entries()) a[i * size + n + k] = a[(n + k) * size + i] = of
    w[i] = value
  })
  if (n < 3 || !solveLinear(a, w, size)) return null
  return (x, y) => {
    let sum = w[n]! + w[n + 1]! * x + w[n + 2]! * y
    for (let i = 0; i < n; i++) sum += w[i]! * bending(x - samples[i]![0], y - samples[i]![1])
    return sum
  }
}

/** r² ln r from the two legs of r; nothing at the sample itself. */
function bending(dx: number, dy: number): number {
  const square = dx * dx + dy * dy
  return square === 0 ? 0 : (square * Math.log(square)) / 2
}
