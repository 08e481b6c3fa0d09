import { heatFlow } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { loadCurrent } from '../spark/quantities.ts'
import { pumpVoltage } from './quantities.ts'

/** Heat that an electric pump leaves in the fuel: all that it takes, for what it gives as pressure ends as heat behind the regulator. */
export const about = {
  name: 'Heat of the pumps',
  in: { voltage: role(pumpVoltage, 'U_p', 'Voltage at the pump'), current: role(loadCurrent, 'I_p', 'Current of the pumps') },
  out: heatFlow,
  equation: 'voltage * current',
  source: ['derived', 'conservation of energy: fuel that returns to the tank has kept all of it but the little that was burned'],
} as const satisfies About

export const pumpHeat = formula<typeof about>('pump-heat', {}, ({ voltage, current }) => voltage * current)
