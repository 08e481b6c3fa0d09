import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure, heatRatio, specificGasConstant, turbineInletTemperature } from './quantities.ts'

/** Flow of a gas through an opening at the speed of sound: it no longer feels the pressure behind. */
export const about = {
  name: 'Choked flow through an opening',
  in: {
    area: flowArea, dischargeCoefficient, inletPressure: role(gasPressure, 'p_3', 'Pressure before the opening'), inletTemperature: turbineInletTemperature,
    heatRatio, gasConstant: specificGasConstant,
  },
  out: gasFlow,
  equation: 'area * dischargeCoefficient * inletPressure * sqrt(heatRatio / (gasConstant * inletTemperature)) * (2 / (heatRatio + 1))^((heatRatio + 1) / (2 * (heatRatio - 1)))',
  source: ['heywood-ice', 'appendix C, choked flow through a restriction'],
  notes: 'Holds where the pressure behind is below the critical share of that before. Ideal gas; the discharge coefficient takes up friction and contraction.',
} as const satisfies About

export const chokedFlow = formula<typeof about>('choked-flow', {}, ({ area, dischargeCoefficient: share, inletPressure, inletTemperature, heatRatio: gamma, gasConstant }) =>
  area * share * inletPressure * Math.sqrt(gamma / (gasConstant * inletTemperature)) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1))))
