import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dynamicViscosity, leakageFactor, oilFlow, oilPressure, pumpEfficiency } from './quantities.ts'

/** Leakage inside the pump, as a gap like any other: from its efficiency at one pressure and speed. */
export const about = {
  name: 'Slip of the oil pump',
  in: { ideal: role(oilFlow, 'Q_i', 'Flow without slip at the rated speed'), efficiency: pumpEfficiency, viscosity: role(dynamicViscosity, 'η_r', 'Viscosity of that rating'), pressure: role(oilPressure, 'p_r', 'Pressure of that rating') },
  out: leakageFactor,
  equation: 'ideal * (1 - efficiency) * viscosity / pressure',
  sample: { pressure: [1e5, 12e5] },
  source: ['merritt-hydraulic', 'laminar slip of a positive-displacement pump'],
} as const satisfies About

export const pumpSlip = formula<typeof about>('pump-slip', {}, ({ ideal, efficiency, viscosity, pressure }) => (ideal * (1 - efficiency) * viscosity) / pressure)
