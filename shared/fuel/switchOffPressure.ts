import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { handoverPressure, handoverWidth } from './quantities.ts'

/** Manifold pressure at which the secondaries stop again when load falls. */
export const about = {
  name: 'Pressure at which secondaries stop',
  in: { start: handoverPressure, hysteresis: role(handoverWidth, 'Δp_x', 'Hysteresis') },
  out: role(handoverPressure, 'p_off', 'Manifold pressure at which secondaries stop'),
  equation: 'start - hysteresis',
  source: ['common-practice', 'a gap between on and off keeps a steady throttle from switching'],
} as const satisfies About

export const switchOffPressure = formula<typeof about>('switch-off-pressure', {}, ({ start, hysteresis }) => start - hysteresis)
