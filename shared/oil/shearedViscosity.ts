import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { runningTime, viscosityAt100, viscosityLoss } from './quantities.ts'

/** Viscosity of an oil whose thickener is torn in use: it falls quickly at first and settles. */
export const about = {
  name: 'Viscosity after shear in use',
  in: { fresh: role(viscosityAt100, 'ν_0', 'Fresh oil at 100 °C'), lost: role(viscosityLoss, 'L_∞', 'Loss it settles at'), settling: role(runningTime, 't_L', 'Hours to 63 % of that loss'), time: runningTime },
  out: viscosityAt100,
  equation: 'fresh * (1 - lost * (1 - exp(-time / settling)))',
  sample: { settling: [3600, 3e5], lost: [0, 0.4] },
  source: ['common-practice', 'ASTM D6278 and D7109 measure the loss that it settles at; the way there is taken as an exponential, no source'],
} as const satisfies About

export const shearedViscosity = formula<typeof about>('sheared-viscosity', {}, ({ fresh, lost, settling, time }) => fresh * (1 - lost * (1 - Math.exp(-time / settling))))
