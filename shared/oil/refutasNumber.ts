import { formula, type About } from '../formula/formula.ts'
import { blendingNumber, kinematicViscosity } from './quantities.ts'

/** Blending number of a viscosity: adds up by mass. */
export const about = {
  name: 'Viscosity blending number',
  in: { viscosity: kinematicViscosity },
  out: blendingNumber,
  equation: '14.534 * log(log(viscosity + 0.8)) + 10.975',
  units: { viscosity: 'mm²/s' },
  source: ['maples-refinery', 'viscosity blending number, by mass'],
} as const satisfies About

export const refutasNumber = formula<typeof about>('refutas-number', {}, ({ viscosity }) => 14.534 * Math.log(Math.log(viscosity * 1e6 + 0.8)) + 10.975)
