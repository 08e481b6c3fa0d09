import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { chargeTime, coilCurrent, coilInductance, coilResistance, coilVoltage } from './quantities.ts'

/**
 * Time in which the current in a coil rises from nothing to what is wanted. `−L / R ln(1 − I R / U)`, seconds. It has no value where the
 * circuit’s resistance stops the current short of it: the caller asks first.
 */
export const about = {
  name: 'Charge time of a coil',
  in: { inductance: coilInductance, resistance: coilResistance, current: coilCurrent, voltage: role(coilVoltage, 'U_L', 'Voltage across the coil') },
  out: chargeTime,
  equation: '-inductance / resistance * log(1 - current * resistance / voltage)',
  source: ['nilsson-circuits', 'section 7.3, step response of an RL circuit'],
  notes: 'Constant inductance: near saturation a coil charges faster than this, and stores no more for it. Source states no range.',
  sample: { resistance: [0.1, 0.6], current: [1, 7], voltage: [6, 18] },
} as const satisfies About

export const coilChargeTime = formula<typeof about>('coil-charge-time', {},
  ({ inductance, resistance, current, voltage }) => (-inductance / resistance) * Math.log(1 - (current * resistance) / voltage))
