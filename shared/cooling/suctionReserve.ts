import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { inletLossOf, suctionPressure, systemPressure } from './quantities.ts'

/** How far the inlet of the pump stands above boiling. */
export const about = {
  name: 'Pressure above boiling at the pump',
  in: { system: systemPressure, loss: inletLossOf, boiling: role(systemPressure, 'p_v', 'Coolant boils at') },
  out: suctionPressure,
  equation: 'system - loss - boiling',
  source: ['brennen-pumps', 'net positive suction pressure'],
  notes: 'The header tank is taken to join the circuit at the pump’s inlet side.',
} as const satisfies About

export const suctionReserve = formula<typeof about>('suction-reserve', {}, ({ system, loss, boiling }) => system - loss - boiling)
