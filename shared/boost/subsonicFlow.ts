import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure, heatRatio, specificGasConstant, turbineInletTemperature } from './quantities.ts'

/** Flow of a gas through an opening below the speed of sound. */
export const about = {
  name: 'Subsonic flow through an opening',
  in: {
    area: flowArea, dischargeCoefficient, inletPressure: role(gasPressure, 'p_3', 'Pressure before the opening'), inletTemperature: turbineInletTemperature, outletPressure: role(gasPressure, 'p_4', 'Pressure behind the opening'),
    heatRatio, gasConstant: specificGasConstant,
  },
  out: gasFlow,
  equation: 'area * dischargeCoefficient * inletPressure * (outletPressure / inletPressure)^(1 / heatRatio) * sqrt(2 * heatRatio / ((heatRatio - 1) * gasConstant * inletTemperature) * (1 - (outletPressure / inletPressure)^((heatRatio - 1) / heatRatio)))',
  source: ['heywood-ice', 'appendix C, subsonic flow through a restriction'],
  notes: 'Holds where the pressure behind is above the critical share of that before. Ideal gas; the discharge coefficient takes up friction and contraction.',
  sample: { inletPressure: [160e3, 200e3], outletPressure: [120e3, 150e3] },
} as const satisfies About

export const subsonicFlow = formula<typeof about>('subsonic-flow', {}, ({ area, dischargeCoefficient: share, inletPressure, inletTemperature, outletPressure, heatRatio: gamma, gasConstant }) => {
  const left = outletPressure / inletPressure
  return area * share * inletPressure * left ** (1 / gamma) * Math.sqrt(((2 * gamma) / ((gamma - 1) * gasConstant * inletTemperature)) * (1 - left ** ((gamma - 1) / gamma)))
})
