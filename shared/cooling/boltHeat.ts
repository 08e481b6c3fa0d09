import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltArea, endDifference, jointHeat, spacerConductivityOf, spacerThickness } from './quantities.ts'

/** Heat that goes around a spacer through its bolts. */
export const about = {
  name: 'Heat through the bolts',
  in: { difference: role(endDifference, 'ΔT', 'Difference between the two sides'), length: role(spacerThickness, 'l_b', 'Length of bolt across the spacer'), conductivity: role(spacerConductivityOf, 'k_b', 'Conductivity of the bolts'), area: boltArea },
  out: jointHeat,
  equation: 'conductivity * area * difference / length',
  source: ['incropera', 'equation 3.4, conduction along a bar'],
  notes: 'The free length between head and thread is longer than the spacer is thick, so this is an upper bound.',
} as const satisfies About

export const boltHeat = formula<typeof about>('bolt-heat', {}, ({ difference, length, conductivity, area }) => (conductivity * area * difference) / length)
