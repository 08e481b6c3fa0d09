import { heatFlow } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { fuelRise, tankConductance } from './quantities.ts'

/** How far above the air a tank settles that gets heat. */
export const about = {
  name: 'Rise at which heat in and loss agree',
  in: { heat: heatFlow, surface: tankConductance },
  out: fuelRise,
  equation: 'heat / surface',
  source: ['derived', 'steady state: what comes in goes out by the surface'],
} as const satisfies About

export const riseOverSurface = formula<typeof about>('rise-over-surface', {}, ({ heat, surface }) => heat / surface)
