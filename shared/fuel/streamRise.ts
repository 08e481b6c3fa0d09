import { heatFlow } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { fuelFlow, fuelRise, fuelSpecificHeat } from './quantities.ts'

/** How much a stream of fuel warms when heat goes into it. */
export const about = {
  name: 'Warming of a stream',
  in: { heat: heatFlow, flow: fuelFlow, specificHeat: fuelSpecificHeat },
  out: fuelRise,
  equation: 'heat / (flow * specificHeat)',
  source: ['derived', 'conservation of energy in a steady stream'],
} as const satisfies About

export const streamRise = formula<typeof about>('stream-rise', {}, ({ heat, flow, specificHeat }) => heat / (flow * specificHeat))
