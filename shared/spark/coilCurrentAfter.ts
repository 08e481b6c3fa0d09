import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { chargeTime, coilCurrent, coilInductance, coilResistance, coilVoltage } from './quantities.ts'

/** Current in a coil after a time of charging. `U / R (1 − e^(−t R / L))`, amperes. */
export const about = {
  name: 'Current after a time of charging',
  in: { inductance: coilInductance, resistance: coilResistance, time: chargeTime, voltage: role(coilVoltage, 'U_L', 'Voltage across the coil') },
  out: coilCurrent,
  equation: 'voltage / resistance * (1 - exp(-time * resistance / inductance))',
  source: ['nilsson-circuits', 'section 7.3, step response of an RL circuit'],
  notes: 'Constant inductance. Source states no range.',
} as const satisfies About

export const coilCurrentAfter = formula<typeof about>('coil-current-after', {},
  ({ inductance, resistance, time, voltage }) => (voltage / resistance) * (1 - Math.exp((-time * resistance) / inductance)))
