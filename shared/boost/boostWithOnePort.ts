import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { actuatorPressure, keptShare } from './quantities.ts'

/** Boost at which an actuator sees a given pressure while a control valve bleeds part of the boost away. */
export const about = {
  name: 'Boost with one port controlled',
  in: { pressure: actuatorPressure, kept: keptShare },
  out: role(actuatorPressure, 'p_b1', 'Boost with one port'),
  equation: 'pressure / (1 - kept)',
  source: ['derived', 'the actuator sees what the control valve leaves of the boost'],
} as const satisfies About

export const boostWithOnePort = formula<typeof about>('boost-with-one-port', {}, ({ pressure, kept }) => pressure / (1 - kept))
