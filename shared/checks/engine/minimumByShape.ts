import { type Check } from '../check.ts'

/** Theoretical compression ratio over R/e, turned into the minimum volume it means for e = 15 mm and b = 80 mm. */
const ratios: readonly (readonly [shape: number, ratio: number])[] = [
  [5.5, 14.2107], [6, 15.608], [6.5, 16.967], [7, 18.2857], [7.5, 19.5632], [8, 20.7991], [8.5, 21.9939], [9, 23.1481], [10, 25.3387],
]

export const checks: readonly Check[] = ratios.map(([shape, ratio]): Check => {
  const swept = 3 * Math.sqrt(3) * 15 * (15 * shape) * 80 / 1000
  const least = swept / (ratio - 1)
  return {
    id: `minimum-volume-shape-${shape}`, of: 'unshifted-minimum-volume', in: { generatingRadius: shape * 0.015, eccentricity: '15 mm', width: '80 mm' },
    // A digit of the ratio's fourth decimal, in volume.
    out: { out: { value: least, unit: 'cm³', tolerance: 5e-5 * least / (ratio - 1) * 1.2 } },
    source: `Theoretical compression ratio ${ratio} at R/e = ${shape} by closed form, checked at 7 by polygons; the volume is 3 √3 e R b/(ratio - 1)`, confidence: 'derived independently',
  }
})
