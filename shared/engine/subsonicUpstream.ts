import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, airHeatRatio } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure } from '../boost/quantities.ts'
import { chargeTemperature } from './quantities.ts'

/** Pressure before an opening that pushes a flow of air through it below the speed of sound. */
export const about = {
  name: 'Pressure before an opening, subsonic',
  in: { flow: gasFlow, area: flowArea, dischargeCoefficient, temperature: chargeTemperature, after: role(gasPressure, 'p_a', 'Pressure behind the opening') },
  out: role(gasPressure, 'p_v', 'Pressure before the opening'),
  constants: { airGasConstant, airHeatRatio },
  equation: 'after * (1 / 2 + sqrt(1 / 4 + (airHeatRatio - 1) / (2 * airHeatRatio) * airGasConstant * temperature * (flow / (dischargeCoefficient * area * after))^2))^(airHeatRatio / (airHeatRatio - 1))',
  source: ['heywood-1988', 'appendix C, subsonic flow through a restriction, solved for the pressure before it'],
  notes: 'Holds where the pressure behind is above the critical share of that before. With y = (before/after)^((γ-1)/γ) the flow goes with sqrt(y² - y), so y is the root of a square.',
} as const satisfies About

const k = (airHeatRatio.value - 1) / airHeatRatio.value

export const subsonicUpstream = formula<typeof about>('subsonic-upstream', {}, ({ flow, area, dischargeCoefficient: share, temperature, after }) =>
  after * (0.5 + Math.sqrt(0.25 + (k / 2) * airGasConstant.value * temperature * (flow / (share * area * after)) ** 2)) ** (1 / k))
