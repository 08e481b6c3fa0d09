import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { chargeTime, coilCount, coilCurrent, coilInductance, coilResistance, coilVoltage, loadCurrent, sparksPerTurn } from './quantities.ts'

/**
 * Mean current that all coils take from the supply. Each charge draws the integral of its rising current, `(U t − L I) / R`, as many
 * times a second as there are sparks. Amperes.
 */
export const about = {
  name: 'Mean current of the coils',
  in: {
    inductance: coilInductance, resistance: coilResistance, current: coilCurrent, voltage: role(coilVoltage, 'U_L', 'Voltage across the coil'), time: chargeTime,
    sparks: sparksPerTurn, speed: shaftSpeed, coils: coilCount,
  },
  out: role(loadCurrent, 'I_z', 'Current of the coils'),
  equation: '(voltage * time - inductance * current) / resistance * sparks * speed / (2 * pi) * coils',
  source: ['derived', 'the circuit’s equation L di/dt + R i = U, integrated over one charge'],
  notes: 'A driver that holds the current at its limit draws more than this.',
} as const satisfies About

export const coilMeanCurrent = formula<typeof about>('coil-mean-current', {}, ({ inductance, resistance, current, voltage, time, sparks, speed, coils }) =>
  ((((voltage * time - inductance * current) / resistance) * sparks * speed) / (2 * Math.PI)) * coils)
