import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelVolumeFlow, pumpFlow } from './quantities.ts'

/** Flow that the regulator has to send back: what the pump gives and the engine does not burn. */
export const about = {
  name: 'Flow to be returned',
  in: { pumped: pumpFlow, used: fuelVolumeFlow },
  out: role(fuelVolumeFlow, 'Q_r', 'Flow to be returned'),
  equation: 'pumped - used',
  source: ['derived', 'conservation of volume'],
  notes: 'Less than nothing means that the pump falls short.',
} as const satisfies About

export const returnedFlowOf = formula<typeof about>('returned-flow-of', {}, ({ pumped, used }) => pumped - used)
