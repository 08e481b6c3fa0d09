import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { dynamicViscosity, oilDensity, viscosityAt100, viscosityAt40 } from './quantities.ts'

/** Low-shear dynamic viscosity at 150 °C, to hold the high-shear one against. */
export const about = {
  name: 'Low-shear viscosity at 150 °C',
  in: { viscosity40: viscosityAt40, viscosity100: viscosityAt100, density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C') },
  out: role(dynamicViscosity, 'η_150', 'Low-shear viscosity at 150 °C'),
  steps: ['Carry the straight line of ASTM D341 on to 150 °C.', 'Multiply by the density there.'],
  source: ['astm-d341', 'the line carried beyond 100 °C'],
  notes: 'An extrapolation of 50 K from the figures of a data sheet.',
} as const satisfies About

export const viscosityAt150 = formula<typeof about>('viscosity-at-150', {}, (oil) => filmAtTemperature({ ...oil, share: 1, temperature: 423.15 }))
