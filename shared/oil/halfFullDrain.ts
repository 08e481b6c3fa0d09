import { standardGravity } from '../formula/constants.ts'
import { type About, formula } from '../formula/formula.ts'
import { drainBore, drainFall, drainLength, dynamicViscosity, oilDensity, oilFlow } from './quantities.ts'

/** Oil that runs down a half-full pipe by its own weight. */
export const about = {
  name: 'Flow of a half-full drain',
  in: { bore: drainBore, length: drainLength, fall: drainFall, viscosity: dynamicViscosity, density: oilDensity },
  out: oilFlow,
  equation: 'pi * bore^4 / 256 * g * density * fall / (viscosity * length)',
  constants: { g: standardGravity },
  sample: { length: [0.1, 1], fall: [0.01, 0.4] },
  source: ['white-fluid', 'Hagen-Poiseuille in a pipe; half full it carries exactly half, because no shear crosses its middle'],
  notes: 'For slow, laminar flow, which hot oil in a short drain is near the end of. A bend, a flat place or pressure in the sump takes from it.',
} as const satisfies About

export const halfFullDrain = formula<typeof about>('half-full-drain', {}, ({ bore, length, fall, viscosity, density }) =>
  (((Math.PI * bore ** 4) / 256) * standardGravity.value * density * fall) / (viscosity * length))
