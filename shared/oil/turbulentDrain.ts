import { standardGravity } from '../formula/constants.ts'
import { type About, formula } from '../formula/formula.ts'
import { drainBore, drainFall, drainLength, dynamicViscosity, oilDensity, oilFlow } from './quantities.ts'

/** Oil that runs down a half-full smooth pipe by its own weight when the flow is turbulent. */
export const about = {
  name: 'Flow of a half-full drain, turbulent',
  in: { bore: drainBore, length: drainLength, fall: drainFall, viscosity: dynamicViscosity, density: oilDensity },
  out: oilFlow,
  equation: 'pi * bore^2 / 8 * (2 * g * fall * bore / (0.316 * length) * (density * bore / viscosity)^0.25)^(4/7)',
  constants: { g: standardGravity },
  sample: { length: [0.1, 1], fall: [0.01, 0.4] },
  source: ['white-fluid', 'Blasius: f = 0.316 Re^(-1/4), with the fall as loss of head'],
} as const satisfies About

export const turbulentDrain = formula<typeof about>('turbulent-drain', { }, ({ bore, length, fall, viscosity, density }) => {
  const speed = (((2 * standardGravity.value * fall * bore) / (0.316 * length)) * ((density * bore) / viscosity) ** 0.25) ** (4 / 7)
  return ((Math.PI * bore * bore) / 8) * speed
})
