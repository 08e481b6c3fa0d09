import { formula, type About } from '../formula/formula.ts'
import { airHeatRatio } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { backPressureRatio, compressionRatio, volumetricEfficiency } from './quantities.ts'

/** Filling left when burned gas of the clearance volume expands or is squeezed to manifold pressure, against equal pressures. */
export const about = {
  name: 'Clearance-gas factor of filling',
  in: { backPressureRatio, compressionRatio },
  out: role(volumetricEfficiency, 'f_c', 'Clearance-gas factor'),
  equation: '1 - (backPressureRatio - 1) / (airHeatRatio * (compressionRatio - 1))',
  constants: { airHeatRatio },
  source: ['taylor-1985', 'chapter 6, ideal induction without overlap; the same as Heywood 1988, equation 6.2, against its value at equal pressures'],
  notes: 'Source states no range. Ideal induction with closed overlap, at constant specific heats; the measured fall of a ported engine is larger.',
} as const satisfies About

export const clearanceGasFactor = formula<typeof about>('clearance-gas-factor', {}, ({ backPressureRatio: ratio, compressionRatio: compression }) =>
  1 - (ratio - 1) / (airHeatRatio.value * (compression - 1)))
