import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficientOf, fuelDensity, fuelVolumeFlow, lineBore, nozzleDrop } from './quantities.ts'

/** Flow of a liquid through an orifice. */
export const about = {
  name: 'Flow through an orifice',
  in: { coefficient: dischargeCoefficientOf, diameter: role(lineBore, 'd', 'Diameter of the orifice'), drop: role(nozzleDrop, 'Δp', 'Pressure across the orifice'), density: fuelDensity },
  out: fuelVolumeFlow,
  equation: 'coefficient * pi / 4 * diameter^2 * sqrt(2 * drop / density)',
  source: ['white-fluid', 'section 6.12, Bernoulli obstruction theory'],
  notes: 'Source states no range. The flow coefficient includes the speed of approach; no cavitation.',
} as const satisfies About

export const orificeFlow = formula<typeof about>('orifice-flow', {}, ({ coefficient, diameter, drop, density }) => ((coefficient * Math.PI) / 4) * diameter ** 2 * Math.sqrt((2 * drop) / density))
