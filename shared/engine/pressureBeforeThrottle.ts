import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airHeatRatio } from '../formula/constants.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure } from '../boost/quantities.ts'
import { chokedUpstream } from './chokedUpstream.ts'
import { chargeTemperature, manifoldPressure } from './quantities.ts'
import { subsonicUpstream } from './subsonicUpstream.ts'

/** Pressure before a throttle that passes a flow of air into a manifold. */
export const about = {
  name: 'Pressure before the throttle',
  in: { flow: gasFlow, area: flowArea, dischargeCoefficient, temperature: chargeTemperature, manifold: manifoldPressure },
  out: role(gasPressure, 'p_v', 'Pressure before the throttle'),
  steps: [
    'Take the pressure before an opening below the speed of sound.',
    'Where the manifold lies below the critical share of it, 0.528 for air, take the choked opening instead. The two meet there.',
  ],
  source: ['heywood-1988', 'section 7.6 and appendix C, flow through a throttle plate'],
  notes: 'Ideal gas; the temperature is that before the plate. The discharge coefficient takes up friction and contraction.',
} as const satisfies About

const critical = (2 / (airHeatRatio.value + 1)) ** (airHeatRatio.value / (airHeatRatio.value - 1))

export const pressureBeforeThrottle = formula<typeof about>('pressure-before-throttle', {}, (x) => {
  const before = subsonicUpstream({ ...x, after: x.manifold })
  return x.manifold >= critical * before ? before : chokedUpstream(x)
})
