import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { clearanceGasFactor } from './clearanceGasFactor.ts'
import { backPressureRatio, compressionRatio, overlapFactor, volumetricEfficiency } from './quantities.ts'

/** Volumetric efficiency at another back-pressure ratio than the one it was found at. */
export const about = {
  name: 'Volumetric efficiency under back-pressure',
  in: { ve: role(volumetricEfficiency, 'η_v0', 'Volumetric efficiency at the reference'), backPressureRatio, referenceRatio: role(backPressureRatio, 'r_x0', 'Reference back-pressure ratio'), overlapFactor, compressionRatio },
  out: volumetricEfficiency,
  steps: [
    'Take the clearance-gas factor at the back-pressure ratio and at the reference ratio; their quotient is the fall without overlap.',
    'Where that quotient is below one half, continue it as 1/(4 (1 - quotient)): same value and slope there, never zero, so that a solver passing through far-off ratios meets a positive filling.',
    'Multiply by exp(-overlapFactor (ratio - reference)): burned gas drawn back while intake and exhaust are open together. The factor is the share of filling lost per unit of ratio.',
  ],
  source: ['taylor-1985', 'chapter 6, clearance gas; the overlap factor is common practice, no source'],
  notes: 'A volumetric efficiency fitted from a log holds its own back-pressure already: set the reference to the ratio of that log. The bounding below one half acts from a ratio near 6.6 at compression ratio 9, where no engine runs.',
} as const satisfies About

export const backPressureVe = formula<typeof about>('back-pressure-ve', {}, ({ ve, backPressureRatio: ratio, referenceRatio, overlapFactor: overlap, compressionRatio: compression }) => {
  const fall = clearanceGasFactor({ backPressureRatio: ratio, compressionRatio: compression }) / clearanceGasFactor({ backPressureRatio: referenceRatio, compressionRatio: compression })
  const bounded = fall < 0.5 ? 0.25 / (1 - fall) : fall
  return ve * bounded * Math.exp(-overlap * (ratio - referenceRatio))
})
