import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dynamicFromKinematic } from './dynamicFromKinematic.ts'
import { filmViscosity } from './filmViscosity.ts'
import { oilDensityAt } from './oilDensityAt.ts'
import { dynamicViscosity, highShearShare, oilDensity, oilTemperature, viscosityAt100, viscosityAt40 } from './quantities.ts'
import { waltherLine } from './waltherLine.ts'
import { waltherViscosity } from './waltherViscosity.ts'

/** Viscosity in a fast film at any temperature, from the oil's two standard viscosities. */
export const about = {
  name: 'Film viscosity at a temperature',
  in: { viscosity40: viscosityAt40, viscosity100: viscosityAt100, density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), share: highShearShare, temperature: oilTemperature },
  out: dynamicViscosity,
  steps: ['Lay the straight line of ASTM D341 through the viscosities at 40 and 100 °C.', 'Read it at the temperature.', 'Multiply by the density there.', 'Multiply by the share left at high shear.'],
  source: ['astm-d341', 'with density by ASTM D1250'],
} as const satisfies About

const at40 = 313.15, at100 = 373.15

export const filmAtTemperature = formula<typeof about>('film-at-temperature', {}, ({ viscosity40, viscosity100, density15, share, temperature }) => {
  const line = waltherLine({ viscosity1: viscosity40, temperature1: at40, viscosity2: viscosity100, temperature2: at100 })
  const viscosity = waltherViscosity({ ...line, temperature })
  return filmViscosity({ lowShear: dynamicFromKinematic({ viscosity, density: oilDensityAt({ density15, temperature }) }), share })
})
