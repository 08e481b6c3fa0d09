import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, airHeatRatio } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure } from '../boost/quantities.ts'
import { chargeTemperature } from './quantities.ts'

/** Pressure before an opening in which air moves at the speed of sound. */
export const about = {
  name: 'Pressure before an opening, choked',
  in: { flow: gasFlow, area: flowArea, dischargeCoefficient, temperature: chargeTemperature },
  out: role(gasPressure, 'p_v', 'Pressure before the opening'),
  constants: { airGasConstant, airHeatRatio },
  equation: 'flow / (dischargeCoefficient * area) * sqrt(airGasConstant * temperature / airHeatRatio) * ((airHeatRatio + 1) / 2)^((airHeatRatio + 1) / (2 * (airHeatRatio - 1)))',
  source: ['heywood-1988', 'appendix C, choked flow through a restriction, solved for the pressure before it'],
  notes: 'The pressure behind no longer counts.',
} as const satisfies About

const g = airHeatRatio.value

export const chokedUpstream = formula<typeof about>('choked-upstream', {}, ({ flow, area, dischargeCoefficient: share, temperature }) =>
  (flow / (share * area)) * Math.sqrt((airGasConstant.value * temperature) / g) * ((g + 1) / 2) ** ((g + 1) / (2 * (g - 1))))
