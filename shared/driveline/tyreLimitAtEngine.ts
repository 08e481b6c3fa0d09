import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { torque } from '../engine/quantities.ts'
import { axleTorque, driveEfficiency, finalDrive, gearRatio } from './quantities.ts'

/** Engine torque at which the driven tyres slip in a gear. `M_t / (i_g i_f η)`, newton metres. */
export const about = {
  name: 'Engine torque at the tyre limit',
  in: { limit: role(axleTorque, 'M_t', 'Tyre limit'), ratio: gearRatio, finalDrive, efficiency: driveEfficiency },
  out: role(torque, 'M_lim', 'Engine torque at the tyre limit'),
  equation: 'limit / (ratio * finalDrive * efficiency)',
  source: ['definition', 'of gear ratio and efficiency'],
} as const satisfies About

export const tyreLimitAtEngine = formula<typeof about>('tyre-limit-at-engine', {}, ({ limit, ratio, finalDrive, efficiency }) => limit / (ratio * finalDrive * efficiency))
