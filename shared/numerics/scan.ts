import { bracketedRoot } from './root.ts'

export type Scan = { readonly roots: readonly { readonly x: number; readonly residual: number }[]; readonly jumps: readonly number[]; readonly gaps: boolean }

/**
 * Looks for every x in a range at which f is zero, by evaluating at evenly spaced points and closing in on each change of sign.
 * Roots closer together than one spacing may be missed. A change of sign across which f leaps is a jump, not a root.
 * @param f may return NaN where it has no value: such points are passed over and reported as gaps
 */
export function scanRoots(f: (x: number) => number, low: number, high: number, points = 65): Scan {
  const roots: { x: number; residual: number }[] = []
  const jumps: number[] = []
  let gaps = false
  let x0 = low, f0 = f(low)
  if (f0 === 0) roots.push({ x: low, residual: 0 })
  for (let i = 1; i < points; i++) {
    const x1 = i === points - 1 ? high : low + ((high - low) * i) / (points - 1)
    const f1 = f(x1)
    if (Number.isNaN(f1) || Number.isNaN(f0)) gaps = true
    else if (f1 === 0) roots.push({ x: x1, residual: 0 })
    else if (f0 !== 0 && f0 > 0 !== f1 > 0) {
      const found = bracketedRoot(f, x0, x1, Math.abs(high - low) * 1e-13, f0, f1)
      // At a root the function shrinks with the bracket; at a jump it stays about as large as it was at the ends.
      if (Number.isNaN(found.residual)) gaps = true
      else if (Math.abs(found.residual) > 1e-3 * Math.min(Math.abs(f0), Math.abs(f1)) && Math.abs(found.residual) > 1e-9) jumps.push(found.x)
      else roots.push(found)
    }
    x0 = x1; f0 = f1
  }
  return { roots, jumps, gaps }
}
