/** Mean and standard deviation of samples; values that are no number are left out. */
export function meanAndDeviation(of: ArrayLike<number>): { readonly mean: number; readonly deviation: number } {
  let count = 0, mean = 0, squares = 0
  for (let i = 0; i < of.length; i++) {
    const value = of[i]!
    if (!Number.isFinite(value)) continue
    count++
    const off = value - mean
    mean += off / count
    squares += off * (value - mean)
  }
  return { mean: count > 0 ? mean : NaN, deviation: count > 1 ? Math.sqrt(squares / (count - 1)) : NaN }
}

/** The interval that holds 95 of 100 samples, with half of the others below and half above. Source: JCGM 101:2008, 7.7.2. */
export function interval95(of: ArrayLike<number>): readonly [low: number, high: number] {
  const sorted = Float64Array.from(of).sort()
  const held = Math.round(0.95 * sorted.length)
  const below = Math.max(1, Math.round((sorted.length - held) / 2))
  return [sorted[below - 1] ?? NaN, sorted[Math.min(sorted.length, below + held) - 1] ?? NaN]
}

/** Places of samples in their order, from 0; those that are alike share the mean of their places. */
export function ranks(of: ArrayLike<number>): Float64Array {
  const order = Array.from({ length: of.length }, (_, i) => i).sort((a, b) => of[a]! - of[b]!)
  const places = new Float64Array(of.length)
  for (let i = 0; i < order.length;) {
    let end = i + 1
    while (end < order.length && of[order[end]!] === of[order[i]!]) end++
    for (let k = i; k < end; k++) places[order[k]!] = (i + end - 1) / 2
    i = end
  }
  return places
}

/** Correlation of two rows of numbers: of their ranks, it is Spearman's. Nothing where one of them never changes. */
export function correlation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const { mean: meanA } = meanAndDeviation(a)
  const { mean: meanB } = meanAndDeviation(b)
  let ab = 0, aa = 0, bb = 0
  for (let i = 0; i < a.length; i++) {
    const x = a[i]! - meanA
    const y = b[i]! - meanB
    ab += x * y
    aa += x * x
    bb += y * y
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0
}
