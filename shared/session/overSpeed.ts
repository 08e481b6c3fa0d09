import { type Point } from '../build/point.ts'
import { NoAnswer } from '../calculation/calculation.ts'

/** A value of the solved points over shaft speed, straight between them and level beyond; points without a solution are passed over. */
export function overSpeed(points: readonly Point[], path: string): (speed: number) => number {
  const known = points.filter((p) => p.values[path] !== undefined)
  if (known.length === 0) throw new NoAnswer('sweep', 'No speed of the sweep has a solution: mend the build first, the margins page says what is missing.')
  const x = known.map((p) => p.speed), y = known.map((p) => p.values[path]!)
  return (speed) => {
    if (speed <= x[0]!) return y[0]!
    for (let i = 1; i < x.length; i++) if (speed <= x[i]!) return y[i - 1]! + ((y[i]! - y[i - 1]!) * (speed - x[i - 1]!)) / (x[i]! - x[i - 1]!)
    return y.at(-1)!
  }
}
