import { formula, type About } from '../formula/formula.ts'
import { coilCurrent, coilEnergy, coilInductance } from './quantities.ts'

/** Energy stored in a coil at a current. `L I² / 2`, joules. */
export const about = {
  name: 'Energy stored in a coil',
  in: { inductance: coilInductance, current: coilCurrent },
  out: coilEnergy,
  equation: 'inductance * current^2 / 2',
  source: ['nilsson-circuits', 'section 6.1, energy of an inductor'],
  notes: 'What reaches the gap is less: the coil, the lead and the plug’s own resistance keep a good part.',
} as const satisfies About

export const coilEnergyAt = formula<typeof about>('coil-energy-at', {}, ({ inductance, current }) => (inductance * current ** 2) / 2)
